import { readSettings } from '@/lib/settings/settings'

/** The address of the database that this process uses. */
export function urlInUse(): string {
  const { databaseUrl } = readSettings(process.env)
  if (databaseUrl) return databaseUrl
  throw new Error('There is no DATABASE_URL. `npm start` and `npm run dev` set it for the private database.')
}

import { database } from '@/lib/db/client'

/** Throws when the database cannot be reached. */
export async function databaseAnswers(): Promise<void> {
  await database().$queryRaw`SELECT 1`
}

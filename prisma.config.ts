import { defineConfig } from 'prisma/config'

/**
 * For Prisma's own command line. The app passes its address to the client itself;
 * the address here serves those who run `prisma migrate deploy` by hand.
 */
export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations' },
  ...(process.env.DATABASE_URL ? { datasource: { url: process.env.DATABASE_URL } } : {}),
})

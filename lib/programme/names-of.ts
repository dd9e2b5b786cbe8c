import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import type { Named } from '@/lib/programme/rows'

/** The names of people by their ids. */
export async function namesOf(
  db: Pick<PrismaClient | Transaction, 'person'>,
  ids: readonly string[],
): Promise<Named> {
  const people = await db.person.findMany({
    where: { id: { in: [...new Set(ids)] } },
    select: { id: true, name: true },
  })
  const names = new Map(people.map(({ id, name }) => [id, name]))
  return (id) => names.get(id) ?? 'somebody unknown'
}

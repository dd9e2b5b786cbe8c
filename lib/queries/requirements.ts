import { database } from '@/lib/db/client'

/** Every requirement ever stated on one limit, newest first, with who stated and who withdrew it: two statements. */
export async function readRequirements(programmeId: string, limit: string) {
  const stated = await database().requirement.findMany({
    where: { programmeId, limit },
    orderBy: { at: 'desc' },
    take: 200,
    select: {
      id: true,
      authority: true,
      document: true,
      clause: true,
      value: true,
      relaxes: true,
      reason: true,
      companyRule: true,
      authorId: true,
      at: true,
      withdrawnById: true,
      withdrawnAt: true,
      notice: true,
      withdrawnNotice: true,
    },
  })
  const people = await database().person.findMany({
    where: {
      id: { in: stated.flatMap(({ authorId, withdrawnById }) => [authorId, withdrawnById ?? authorId]) },
    },
    select: { id: true, name: true },
  })
  const nameOf = (id: string) => people.find((person) => person.id === id)?.name ?? 'somebody unknown'
  return stated.map(({ authorId, withdrawnById, withdrawnAt, withdrawnNotice, at, ...requirement }) => ({
    ...requirement,
    at: at.toISOString(),
    author: nameOf(authorId),
    withdrawn:
      withdrawnById && withdrawnAt
        ? { by: nameOf(withdrawnById), at: withdrawnAt.toISOString(), notice: withdrawnNotice }
        : null,
  }))
}

export type StatedRequirement = Awaited<ReturnType<typeof readRequirements>>[number]

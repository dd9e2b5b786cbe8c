import { database } from '@/lib/db/client'

interface LineStated {
  readonly code: string
  readonly name: string
  readonly since: Date
  readonly leftAt: Date | null
}

/** The lines that a programme states or stated, each once as it stands, and the open lines it could state. */
export interface LinesOfProgramme {
  readonly stated: readonly LineStated[]
  readonly others: readonly { readonly code: string; readonly name: string }[]
}

export async function readProgrammeLines(programmeId: string): Promise<LinesOfProgramme> {
  const [rows, open] = await Promise.all([
    database().programmeLine.findMany({
      where: { programmeId },
      orderBy: [{ at: 'asc' }, { id: 'asc' }],
      include: { line: { select: { code: true, name: true } } },
    }),
    database().line.findMany({
      where: { closedAt: null },
      orderBy: { code: 'asc' },
      select: { code: true, name: true },
    }),
  ])
  // A line that was left and stated again stands as it was stated last.
  const stated = new Map(
    rows.map(({ line, at, leftAt }) => [line.code, { code: line.code, name: line.name, since: at, leftAt }]),
  )
  return {
    stated: [...stated.values()],
    others: open.filter(({ code }) => stated.get(code)?.leftAt !== null),
  }
}

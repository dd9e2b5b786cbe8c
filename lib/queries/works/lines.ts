import { database } from '@/lib/db/client'
import { logName } from '@/shared/works/log-name'

/** A log of a machine, with when its newest reading was taken and the batch that holds it. */
export interface LogInPlace {
  readonly id: string
  /** As the machine calls it. */
  readonly name: string
  readonly characteristic: string
  readonly instrumentId: string | null
  readonly everyH: number | null
  readonly onlyForId: string | null
  readonly newest: { readonly batch: string; readonly at: Date } | null
}

export interface MachineInPlace {
  readonly id: string
  readonly code: string
  readonly kind: string
  readonly closedAt: Date | null
  readonly logs: readonly LogInPlace[]
}

export interface LineInPlace {
  readonly id: string
  readonly code: string
  readonly name: string
  readonly closedAt: Date | null
  readonly machines: readonly MachineInPlace[]
  /** Ids of the programmes that state it today. */
  readonly programmes: readonly string[]
}

interface NewestRow {
  readonly logId: string
  readonly batch: string
  readonly at: Date
}

/** Every line of the works, or one, with what stands on it: two statements. */
export async function readLines(code?: string): Promise<LineInPlace[]> {
  const [lines, newest] = await Promise.all([
    database().line.findMany({
      where: code === undefined ? {} : { code },
      orderBy: [{ closedAt: { sort: 'asc', nulls: 'first' } }, { code: 'asc' }],
      include: {
        programmes: { where: { leftAt: null }, select: { programmeId: true } },
        machines: {
          orderBy: [{ closedAt: { sort: 'asc', nulls: 'first' } }, { code: 'asc' }],
          include: {
            logs: {
              include: { subject: { select: { kind: true, code: true } } },
              orderBy: [{ characteristic: 'asc' }, { at: 'asc' }, { id: 'asc' }],
            },
          },
        },
      },
    }),
    newestOfEachLog(code),
  ])
  return lines.map(({ id, code: own, name, closedAt, machines, programmes }) => ({
    id,
    code: own,
    name,
    closedAt,
    programmes: programmes.map(({ programmeId }) => programmeId),
    machines: machines.map((machine) => ({
      id: machine.id,
      code: machine.code,
      kind: machine.kind,
      closedAt: machine.closedAt,
      logs: machine.logs.map(({ subject, ...log }) => ({
        id: log.id,
        name: logName(log.code, subject),
        characteristic: log.characteristic,
        instrumentId: log.instrumentId,
        everyH: log.everyH,
        onlyForId: log.onlyForId,
        newest: newest.get(log.id) ?? null,
      })),
    })),
  }))
}

/** Of the logs of every line, or of one. */
async function newestOfEachLog(line: string | undefined): Promise<ReadonlyMap<string, NewestRow>> {
  const rows = await database().$queryRaw<NewestRow[]>`
    SELECT log."id"::text AS "logId", newest."id"::text AS "batch", newest."newestAt" AS "at"
    FROM "Log" AS log
    JOIN "Machine" AS machine ON machine."id" = log."machineId"
    JOIN "Line" AS line ON line."id" = machine."lineId"
    CROSS JOIN LATERAL (
      SELECT batch."id", batch."newestAt" FROM "ReadingBatch" AS batch
      WHERE batch."logId" = log."id" AND batch."newestAt" IS NOT NULL
      ORDER BY batch."newestAt" DESC, batch."id" DESC LIMIT 1
    ) AS newest
    WHERE ${line ?? null}::text IS NULL OR line."code" = ${line ?? null}`
  return new Map(rows.map((row) => [row.logId, row]))
}

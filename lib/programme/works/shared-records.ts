import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import type { LogWithSubject } from '@/lib/programme/works/shared-logs'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import type { Lot } from '@/shared/records/lot'
import { partKey } from '@/shared/records/lot-identity'
import { logName } from '@/shared/works/log-name'

type Db = PrismaClient | Transaction

const SELECTED = { id: true, kind: true, data: true, trailId: true } as const
const IN_ORDER = [{ at: 'asc' as const }, { id: 'asc' as const }]

/** What is recorded of the logs of a machine; each names its log. */
const OF_LOGS = Object.values<RecordKind>(RECORD_KINDS)
  .filter(({ keptAt }) => keptAt === 'machine')
  .map(({ key }) => key)

/**
 * The records that may speak for a programme, oldest first: its own; the training of everybody and what suppliers did,
 * wherever it was recorded; and what is said of any log that speaks for it, since a signal is answered once.
 */
export function loadRecords(db: Db, programmeId: string, logs: readonly LogWithSubject[]) {
  const ofLogs = new Set(
    logs.flatMap(({ trailId, machineId }) => [trailId, ...(machineId ? [machineId] : [])]),
  )
  return db.record.findMany({
    where: {
      withdrawnAt: null,
      OR: [
        { trailId: programmeId },
        { kind: { in: ['training', 'supplier-action'] } },
        { kind: { in: OF_LOGS }, trailId: { in: [...ofLogs] } },
      ],
    },
    select: SELECTED,
    orderBy: IN_ORDER,
  })
}
export type LoadedRecord = Awaited<ReturnType<typeof loadRecords>>[number]

/** Whether a record, as corrected, speaks for a programme: of what suppliers did, what those of its lots did. */
export const speaksFor = (
  { kind, trailId, data }: Pick<LoadedRecord, 'kind' | 'trailId'> & { readonly data: unknown },
  { programmeId, lots }: { readonly programmeId: string; readonly lots: readonly Lot[] },
): boolean =>
  kind !== 'supplier-action' ||
  trailId === programmeId ||
  lots.some(({ supplier }) => partKey(supplier) === partKey((data as { readonly supplier: string }).supplier))

/**
 * What is recorded of logs, as the programme calls them. It names its log by its code; recorded in another trail, it
 * is of the log of that trail, or of one that the machine's trail calls so. What is of no log of this programme is left out.
 */
export function recordsHere(
  records: readonly LoadedRecord[],
  logs: readonly LogWithSubject[],
  programme: { readonly id: string; readonly code: string },
): LoadedRecord[] {
  return records.flatMap((record) => {
    if (record.trailId === programme.id || !OF_LOGS.includes(record.kind)) return [record]
    const data = record.data as { readonly log: string }
    const log = logs.find(
      ({ trailId, machineId, code, subject }) =>
        (trailId === record.trailId && code === data.log) ||
        (machineId === record.trailId && logName(code, subject) === data.log),
    )
    if (!log) return []
    return [{ ...record, data: { ...data, log: logName(log.code, log.subject, programme.code) } }]
  })
}

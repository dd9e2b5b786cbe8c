import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import type { LogWithSubject } from '@/lib/programme/works/shared-logs'
import type { Lot } from '@/shared/records/lot'
import { partKey } from '@/shared/records/lot-identity'
import { logName } from '@/shared/works/log-name'

type Db = PrismaClient | Transaction

const SELECTED = { id: true, kind: true, data: true, trailId: true } as const
const IN_ORDER = [{ at: 'asc' as const }, { id: 'asc' as const }]

/**
 * The records that may speak for a programme, oldest first: its own; the training of everybody and what suppliers did,
 * wherever it was recorded; and what was found of signals on any log that speaks for it, since a signal is answered once.
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
        { kind: 'signal-answer', trailId: { in: [...ofLogs] } },
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
 * Answers to signals as the programme calls its logs. An answer names its log by its code; recorded in another trail, it
 * is of the log of that trail, or of one that the machine's trail calls so. What is of no log of this programme is left out.
 */
export function recordsHere(
  records: readonly LoadedRecord[],
  logs: readonly LogWithSubject[],
  programme: { readonly id: string; readonly code: string },
): LoadedRecord[] {
  return records.flatMap((record) => {
    if (record.trailId === programme.id || record.kind !== 'signal-answer') return [record]
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

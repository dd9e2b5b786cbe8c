import { guarded, type LetIn } from '@/app/guard/guarded'
import { cellFrom } from '@/app/forms/column-value'
import { instantTyped } from '@/app/forms/instant-in-form'
import { notationIn } from '@/app/forms/works-in-form'
import { findingsReading } from '@/app/signals/log-state'
import type { MachineLogView } from '@/lib/queries/works/machine-log'
import { columnSchema } from '@/shared/columns/column-schema'
import { findCharacteristic } from '@/shared/records/characteristics'
import { recordsWithReadings } from '@/shared/records/records-with-readings'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { judgeSafely } from '@/shared/rules/judge-safely'
import type { Facts } from '@/shared/rules/facts'
import { readingsForRuns } from '@/shared/logs/readings-for-runs'
import { runDaysOf } from '@/shared/logs/run-days'
import type { Log } from '@/shared/records/log'
import { recordsOfKind } from '@/shared/records/records-of-kind'
import { readsMachineLog } from '../log-import'

type Row = Record<string, string | number | boolean>

/** What the rules of each programme of the line would find with one more reading, while it is being typed; nothing is stored. */
export const GET = guarded(readsMachineLog, wouldFind)

function wouldFind({ request, right }: LetIn<unknown, MachineLogView>) {
  const row = rowTyped(right, new URL(request.url).searchParams)
  const findings = row ? right.readBy.flatMap((reader) => findingsOf(reader, row)) : []
  return Response.json({ findings }, { headers: { 'cache-control': 'no-store' } })
}

function rowTyped({ log }: MachineLogView, given: URLSearchParams): Row | undefined {
  const characteristic = findCharacteristic(log.characteristic)
  const at = instantTyped(given, 'at')
  if (!characteristic || typeof at !== 'number') return undefined
  const row: Row = { at }
  for (const [name, column] of Object.entries(characteristic.columns)) {
    const value = cellFrom(column, given.get(name), notationIn(given))
    if (!columnSchema(column).safeParse(value).success) return undefined
    if (value !== undefined) row[name] = value
  }
  return row
}

/** As the programme would read it: of a day on which it did not run, nothing turns. */
function findingsOf({ judged: { state, judgement }, log }: MachineLogView['readBy'][number], row: Row) {
  const { facts, items, programme } = state
  if (!speaksFor(log, facts, row)) return []
  const records = recordsWithReadings(facts.records, log, readingsFromRows([row]))
  const rules = items.flatMap(({ definition }) => definition.rules)
  return findingsReading(log, rules, judgement.findings).map(({ rule, finding: before }) => {
    const { verdict, found, remedy, cautions } = judgeSafely(rule, { ...facts, records }).finding
    return {
      title: `${programme.code}, ${rule.title}`,
      before: before.verdict,
      verdict,
      found,
      remedy: remedy?.message,
      cautions,
    }
  })
}

function speaksFor(log: Log, { records }: Facts, row: Row): boolean {
  const speaks = findCharacteristic(log.characteristic)?.speaks
  const runDays = runDaysOf(log, recordsOfKind(records, 'soldering-run'))
  return speaks !== undefined && readingsForRuns(readingsFromRows([row]), runDays, speaks, log).count > 0
}

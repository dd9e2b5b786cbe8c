import { guarded, type LetIn } from '@/app/guard/guarded'
import { readsProgramme } from '@/app/guard/rights'
import { cellFrom } from '@/app/forms/column-value'
import { instantTyped } from '@/app/forms/instant-in-form'
import { notationIn } from '@/app/forms/works-in-form'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { columnSchema } from '@/shared/columns/column-schema'
import { findCharacteristic } from '@/shared/records/characteristics'
import { recordsWithReadings } from '@/shared/records/records-with-readings'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { judgeSafely } from '@/shared/rules/judge-safely'
import { findingsReading } from '../../log-state'
import { logNamed } from '../log-of'

/** What the rules would find with one more reading, while it is being typed; nothing is stored. */
export const GET = guarded(readsProgramme, wouldFind)

function wouldFind({ request, params, right: view }: LetIn<{ code: string; log: string }, ProgrammeView>) {
  const log = logNamed(view, params.log)
  const characteristic = log && findCharacteristic(log.characteristic)
  if (!log || !characteristic) return Response.json({ findings: [] }, { status: 404 })
  const given = new URL(request.url).searchParams
  const at = instantTyped(given, 'at')
  const row: Record<string, string | number | boolean> = {}
  for (const [name, column] of Object.entries(characteristic.columns)) {
    const value = cellFrom(column, given.get(name), notationIn(given))
    if (!columnSchema(column).safeParse(value).success) return Response.json({ findings: [] })
    if (value !== undefined) row[name] = value
  }
  if (typeof at !== 'number') return Response.json({ findings: [] })
  const { facts, items } = view.state
  const records = recordsWithReadings(facts.records, log, readingsFromRows([{ at, ...row }]))
  const rules = items.flatMap(({ definition }) => definition.rules)
  const findings = findingsReading(log, rules, view.judgement.findings).map(({ rule, finding: before }) => {
    const { verdict, found, remedy, cautions } = judgeSafely(rule, { ...facts, records }).finding
    return { title: rule.title, before: before.verdict, verdict, found, remedy: remedy?.message, cautions }
  })
  return Response.json({ findings }, { headers: { 'cache-control': 'no-store' } })
}

import { findItem, findLimit, findParameter, findRule } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'

type Recorded = Readonly<Record<string, unknown>>

/** One line of what an entry recorded: what it was about, what was said or set, and the reason given. */
export function summaryOf(payload: string): { subject: string; says: string } {
  const recorded = JSON.parse(payload) as Recorded
  const says = [valueOf(recorded), saidIn(recorded)].filter(Boolean).join(' – ')
  return { subject: subjectOf(recorded), says }
}

/** What can be named by its title is; the rest by what it was called. */
function subjectOf(recorded: Recorded): string {
  const number = ['action', 'concession', 'lesson', 'number', 'study']
    .map((key) => recorded[key])
    .find((value) => value !== undefined)
  const [parameter, limit, rule, item] = ['parameter', 'limit', 'rule', 'item'].map((key) =>
    textOf(recorded, key),
  )
  const itemKey = item ?? textOf(recorded, 'itemKey')
  const named =
    (parameter && (findParameter(parameter)?.label ?? parameter)) ??
    (limit && (textOf(recorded, 'label') ?? findLimit(limit)?.label)) ??
    (rule && findRule(rule)?.title) ??
    (itemKey && (findItem(itemKey)?.title ?? textOf(recorded, 'title') ?? itemKey)) ??
    recordKindName(textOf(recorded, 'kind')) ??
    ['lot', 'log', 'code', 'stage', 'tag', 'person', 'lead', 'name', 'kind', 'assembly', 'title']
      .map((key) => textOf(recorded, key))
      .find(Boolean)
  const department = textOf(recorded, 'department') as Department | undefined
  return [typeof number === 'number' && `no. ${number}`, named, department && DEPARTMENT_NAMES[department]]
    .filter(Boolean)
    .join(', ')
}

const recordKindName = (kind: string | undefined): string | undefined =>
  kind && Object.hasOwn(RECORD_KINDS, kind) ? RECORD_KINDS[kind as RecordKindKey].label : undefined

/** What was set, and what it was before. */
function valueOf(recorded: Recorded) {
  const { value, before, readings, inspections, records, assemblies, adopted, proposes, accepted } = recorded
  if (typeof readings === 'number') return counted(readings, 'reading', 'readings')
  if (Array.isArray(inspections)) return counted(inspections.length, 'assembly', 'assemblies')
  if (Array.isArray(records)) return counted(records.length, 'record', 'records')
  if (Array.isArray(assemblies)) return `into ${assemblies.slice(0, 6).join(', ')}`
  if (typeof adopted === 'string') return adopted
  if (typeof proposes === 'string')
    return typeof accepted === 'boolean' ? `${accepted ? 'accepted' : 'declined'}: ${proposes}` : proposes
  if (value === undefined || value === null) return undefined
  return before === null || before === undefined ? inBrief(value) : `${inBrief(before)} → ${inBrief(value)}`
}

/** What was asked, answered, found or given as the reason. */
function saidIn(recorded: Recorded): string | undefined {
  const answer = recorded['answer'] as Recorded | undefined
  return (
    textOf(recorded, 'reason') ??
    textOf(recorded, 'why') ??
    textOf(recorded, 'comment') ??
    (answer && textOf(answer, 'comment')) ??
    textOf(recorded, 'question') ??
    textOf(recorded, 'learnt') ??
    textOf(recorded, 'note') ??
    textOf(recorded, 'found')
  )
}

const counted = (count: number, one: string, several: string): string =>
  `${count} ${count === 1 ? one : several}`

const inBrief = (value: unknown): string =>
  Array.isArray(value)
    ? `${value.length} rows`
    : typeof value === 'object' && value !== null
      ? 'a table'
      : String(value)

const textOf = (recorded: Recorded, key: string): string | undefined => {
  const value = recorded[key]
  return typeof value === 'string' && value ? value : undefined
}

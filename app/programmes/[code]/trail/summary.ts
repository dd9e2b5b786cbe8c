import { findItem, findParameter } from '@/shared/plan/catalogue'

/** One line of what an entry recorded: what it was about, the new value, and the reason given. */
export function summaryOf(payload: string): string {
  const recorded = JSON.parse(payload) as Record<string, unknown>
  const pieces = [
    subjectOf(recorded),
    valueOf(recorded),
    textOf(recorded, 'reason') ?? textOf(recorded, 'why'),
  ]
  return pieces.filter(Boolean).join(' – ')
}

function subjectOf(recorded: Record<string, unknown>): string | undefined {
  const parameter = textOf(recorded, 'parameter')
  if (parameter) return findParameter(parameter)?.label ?? parameter
  const item = textOf(recorded, 'item') ?? textOf(recorded, 'itemKey')
  const number = recorded['action'] ?? recorded['concession'] ?? recorded['number']
  const named = item ? (findItem(item)?.title ?? textOf(recorded, 'title') ?? item) : undefined
  const other = ['stage', 'lot', 'log', 'tag', 'person', 'document', 'kind', 'code', 'name']
    .map((key) => textOf(recorded, key))
    .find(Boolean)
  return [
    typeof number === 'number' ? `no. ${number}` : undefined,
    named ?? other,
    textOf(recorded, 'department'),
  ]
    .filter(Boolean)
    .join(', ')
}

function valueOf({ value, before, readings }: Record<string, unknown>): string | undefined {
  if (typeof readings === 'number') return `${readings} readings`
  if (value === undefined) return undefined
  const now = inBrief(value)
  return before === null || before === undefined ? now : `${inBrief(before)} → ${now}`
}

const inBrief = (value: unknown): string =>
  Array.isArray(value) ? `${value.length} rows` : typeof value === 'object' ? 'a table' : String(value)

const textOf = (recorded: Record<string, unknown>, key: string): string | undefined => {
  const value = recorded[key]
  return typeof value === 'string' && value ? value : undefined
}

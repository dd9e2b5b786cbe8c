import { recordable } from '@/lib/commands/recordable'
import { findParameter } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

export function parameterNamed(key: string): Parameter {
  const parameter = findParameter(key)
  if (!parameter) throw new Refused('The specification has no such parameter.')
  return parameter
}

/** A value as its parameter's declaration holds it; refused at the boxes named `at`. */
export function checkedValue({ schema }: Parameter, value: unknown, at = 'value'): JsonValue {
  const parsed = schema.safeParse(value)
  if (parsed.success) return recordable(parsed.data) as JsonValue
  const fields = Object.fromEntries(
    parsed.error.issues.map(({ path, message }) => [[at, ...path.map(String)].join('.'), message]),
  )
  throw new Refused(Object.values(fields)[0] ?? 'The value cannot be read.', fields)
}

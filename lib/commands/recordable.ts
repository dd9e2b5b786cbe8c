import type { JsonValue } from '@/shared/trail/canonical-json'

type Recordable<Value> = JsonValue extends Value
  ? Value
  : Value extends readonly (infer Entry)[]
    ? Recordable<Entry>[]
    : Value extends object
      ? { [Member in keyof Value]: Recordable<Value[Member]> }
      : Value

/** What an entry records of a value: the same, as plain JSON. */
export const recordable = <Value>(value: Value): Recordable<Value> =>
  JSON.parse(JSON.stringify(value)) as Recordable<Value>

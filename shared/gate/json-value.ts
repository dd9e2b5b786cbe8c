import type { JsonValue } from '@/shared/trail/canonical-json'

/** A value as JSON has it; null where there is none. */
export const jsonValue = (value: unknown): JsonValue =>
  value === undefined ? null : (JSON.parse(JSON.stringify(value)) as JsonValue)

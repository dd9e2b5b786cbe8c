import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Log } from '@/shared/records/log'

/** The log of an address; undefined when the programme has none of that code. */
export function logOf({ state }: ProgrammeView, key: string): Log | undefined {
  const code = decodeURIComponent(key)
  return [...state.facts.records.logs.values()].flat().find((log) => log.code === code)
}

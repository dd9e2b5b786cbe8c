import { ownMember } from '@/shared/own-member'
import { counted } from '@/shared/quantity/counted'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { valuesInWords } from '@/shared/records/values-in-words'

type Values = Readonly<Record<string, unknown>>

const MOST_TOLD = 3

/** What records of a kind say, each value with its unit; of many the first few, and how many there are. */
export function recordsInBrief(key: string, records: readonly Values[]): string {
  const kind: RecordKind | undefined = ownMember(RECORD_KINDS, key)
  const number = counted(records.length, 'record', 'records')
  if (!kind) return number
  const told = records.slice(0, MOST_TOLD).map((record) => valuesInWords(kind.columns, record))
  const left = records.length - told.length
  return [...(records.length > 1 ? [number] : []), ...told, ...(left > 0 ? [`and ${left} more`] : [])].join(
    '; ',
  )
}

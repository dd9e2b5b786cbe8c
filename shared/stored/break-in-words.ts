import { isUtcMillisecondInstant } from '@/shared/trail/rfc3339'
import { subjectInWords } from '@/shared/works/works-kind'
import { coveredTable, type TableName } from './covered-tables'
import { isHashed } from './kept-text'
import type { ColumnDifference, RowShown, StoredBreak } from './stored-break'

/** Sentences that would not be read to the end help nobody. */
const LONGEST_VALUE = 80

/** What is at odds with the entries, for the reader. */
export function storedBreakInWords(found: StoredBreak): string {
  switch (found.kind) {
    case 'changed':
      return `${rowInWords(found.table, found.row)} was changed after entry ${found.seq}: ${differencesInWords(found.differences)}.`
    case 'missing':
      return `${rowInWords(found.table, found.row)}, written by entry ${found.seq}, is not there any more.`
    case 'unrecorded':
      return `${rowInWords(found.table, found.row)} is stored, but no entry made it.`
    case 'unreadable-entry':
      return `Entry ${found.seq} (${found.command}) does not say what it wrote in a form this version knows.`
    case 'file-missing':
      return `The file ${shortHash(found.sha256)}, named by entry ${found.seq}, is missing from the store of evidence.`
    case 'file-changed':
      return `The file ${shortHash(found.sha256)}, named by entry ${found.seq}, was changed: its bytes give another hash.`
    case 'file-unreadable':
      return `The file ${shortHash(found.sha256)}, named by entry ${found.seq}, could not be read. Look at the server’s log and its disk.`
    case 'works-head':
      return `Entry ${found.seq} signs over entry ${found.at} of ${subjectInWords(found.of)}, which that trail does not hold any more.`
    case 'file-register':
      return `The register of files is at odds with entry ${found.seq} about the file ${shortHash(found.sha256)}: ${differencesInWords(found.differences)}.`
  }
}

function rowInWords(table: TableName, row: RowShown): string {
  const named = Object.entries(row).map(([column, text]) => `${wordsOf(column)} ${valueInWords(text)}`)
  return `The ${coveredTable(table).called}${named.length > 0 ? ` (${named.join(', ')})` : ''}`
}

const differencesInWords = (differences: readonly ColumnDifference[]): string =>
  differences
    .map(({ column, recorded, stored }) =>
      isReadable(recorded) && isReadable(stored)
        ? `${wordsOf(column)} was recorded as ${valueInWords(recorded)} and is stored as ${valueInWords(stored)}`
        : `${wordsOf(column)} is not what was recorded`,
    )
    .join('; ')

/** Tables, lists and long texts say more to a machine than to a person. */
const isReadable = (text: string): boolean => !isHashed(text) && !/^[[{]/.test(text)

function valueInWords(text: string): string {
  if (text === 'null') return 'nothing'
  const plain = /^"[^"\\]*"$/.test(text) ? text.slice(1, -1) : text
  if (isUtcMillisecondInstant(plain)) return plain.replace('T', ' ').replace('Z', ' UTC')
  return plain.length <= LONGEST_VALUE ? `“${plain}”` : `“${plain.slice(0, LONGEST_VALUE)}…”`
}

const shortHash = (sha256: string): string => `${sha256.slice(0, 12)}…`

/** "personName" as "person name", "designAt" as "design at"; an item is known by its key. */
const wordsOf = (column: string): string =>
  column === 'itemKey' ? 'item' : column.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()

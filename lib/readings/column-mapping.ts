import type { ReadingField } from './reading-field'

/** Which heading of the file each field is read from, by the field's name. */
export type ColumnMapping = Readonly<Record<string, string>>

/**
 * Suggests a heading for each field: the same words as its label, its name or another word for
 * it, with units in brackets, capitals, accents and punctuation left aside; else a heading that
 * holds all those words. Each heading is used once; a field for which none fits is left out.
 */
export function suggestMapping(headings: readonly string[], fields: readonly ReadingField[]): ColumnMapping {
  const pairs = fields.flatMap((field) =>
    headings.map((heading) => ({ field, heading, likeness: likeness(heading, field) })),
  )
  const mapping: Record<string, string> = { ...separateTimes(headings, fields) }
  const used = new Set<string>(Object.values(mapping))
  for (const { field, heading } of pairs
    .filter(({ likeness }) => likeness > 0)
    .sort((one, other) => other.likeness - one.likeness)) {
    if (mapping[field.name] !== undefined || used.has(heading)) continue
    mapping[field.name] = heading
    used.add(heading)
  }
  return mapping
}

const DATE_ALONE = new Set(['date', 'day'])
const TIME_ALONE = new Set(['time', 'time of day', 'clock', 'clock time'])

/** A heading for the date and another for the time of day, where the file has both. */
function separateTimes(headings: readonly string[], fields: readonly ReadingField[]): ColumnMapping {
  const time = fields.find((field) => field.kind === 'time of day')
  const named = (names: ReadonlySet<string>) =>
    headings.find((heading) => names.has(words(heading).join(' ')))
  const [date, clock] = [named(DATE_ALONE), named(TIME_ALONE)]
  return time && date !== undefined && clock !== undefined ? { [time.of]: date, [time.name]: clock } : {}
}

/** 1 for the same words; less, the more other words the heading holds; 0 when some word is not there. */
function likeness(heading: string, field: ReadingField): number {
  const found = words(heading)
  if (field.kind === 'time of day') return 0
  const withUnit = field.kind === 'number' && field.unit ? [`${field.label} ${field.unit}`] : []
  const names = [field.label, field.name, ...withUnit, ...(field.alsoCalled ?? [])]
    .map(words)
    .filter((list) => list.length > 0)
  return Math.max(
    0,
    ...names.map((name) => (name.every((word) => found.includes(word)) ? name.length / found.length : 0)),
  )
}

const words = (text: string): string[] =>
  text
    .replace(/\[[^\]]*\]|\([^)]*\)/g, ' ')
    .replace(/([\p{Ll}\d])(\p{Lu})/gu, '$1 $2')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}%]+/u)
    .filter((word) => word !== '')

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
  const mapping: Record<string, string> = {}
  const used = new Set<string>()
  for (const { field, heading } of pairs
    .filter(({ likeness }) => likeness > 0)
    .sort((one, other) => other.likeness - one.likeness)) {
    if (mapping[field.name] !== undefined || used.has(heading)) continue
    mapping[field.name] = heading
    used.add(heading)
  }
  return mapping
}

/** 1 for the same words; less, the more other words the heading holds; 0 when some word is not there. */
function likeness(heading: string, field: ReadingField): number {
  const found = words(heading)
  const names = [field.label, field.name, ...(field.alsoCalled ?? [])]
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

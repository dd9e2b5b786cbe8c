import type { ColumnMapping } from '@/lib/readings/column-mapping'
import type { FileForm } from '@/lib/readings/file-form'
import type { ReadingField } from '@/lib/readings/reading-field'

type Given = Readonly<Record<string, string | undefined>>

/** The mapping as chosen in a form or an address (`map.field`), undefined when nothing was chosen. */
export function mappingFrom(given: Given, fields: readonly ReadingField[]): ColumnMapping | undefined {
  const chosen = fields.flatMap(({ name }) => {
    const heading = given[`map.${name}`]
    return heading ? [[name, heading] as const] : []
  })
  return chosen.length > 0 ? Object.fromEntries(chosen) : undefined
}

/** The texts of a form. */
export const textsIn = (form: FormData): Record<string, string> =>
  Object.fromEntries([...form].filter((entry): entry is [string, string] => typeof entry[1] === 'string'))

/** How a file is read, as a form keeps what its preview was made with. */
export const readingText = (mapping: ColumnMapping | undefined, form: Partial<FileForm>): string =>
  JSON.stringify(
    [...Object.entries(mapping ?? {}), ...Object.entries(form).map(([box, way]) => [`as ${box}`, way])].sort(
      ([one = ''], [other = '']) => (one < other ? -1 : 1),
    ),
  )

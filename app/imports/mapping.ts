import type { ColumnMapping } from '@/lib/readings/column-mapping'
import type { ReadingField } from '@/lib/readings/reading-field'

/** The mapping as chosen in a form or an address (`map.field`), undefined when nothing was chosen. */
export function mappingFrom(
  given: Readonly<Record<string, string | undefined>>,
  fields: readonly ReadingField[],
): ColumnMapping | undefined {
  const chosen = fields.flatMap(({ name }) => {
    const heading = given[`map.${name}`]
    return heading ? [[name, heading] as const] : []
  })
  return chosen.length > 0 ? Object.fromEntries(chosen) : undefined
}

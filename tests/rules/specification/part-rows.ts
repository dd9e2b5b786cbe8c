import type { ListedRow } from '@/shared/plan/parameters/parts-list'
import type { ListedPart } from '@/shared/works/listed-part'
import type { PartValues } from '@/shared/works/part-columns'

/** A described and approved part; what a test says differs. */
export const listedPart = (
  code: string,
  values: Partial<PartValues> = {},
  over: Partial<ListedPart> = {},
): ListedPart => ({
  code,
  revision: 1,
  digest: '0'.repeat(64),
  approved: true,
  withdrawn: false,
  values: { description: 'A part', kind: 'component', leads: 2, ...values } as PartValues,
  ...over,
})

export const listRow = (references: string | undefined, part: string, over: Partial<ListedRow> = {}) =>
  ({ references, part, quantity: 1, soldered: 'machine', ...over }) as ListedRow

import { MarginBars } from '@/app/drawing/margin-bars'
import { ItemPictures } from '@/app/pictures/item-pictures'
import { TablesOfItem } from '@/app/pictures/tables/tables-of-item'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ItemState } from '@/shared/gate/item-status'
import type { Margin } from '@/shared/rules/finding'

/** Pictures for those who would rather look than read, each with its numbers beside it. */
export function Pictures({ view, state }: { view: ProgrammeView; state: ItemState }) {
  const { rules, title, key } = state.item.definition
  const margins = rules.flatMap(({ id, title: name }) => {
    const margin = view.judgement.findings.get(id)?.margin
    return margin ? [{ name, margin: margin satisfies Margin }] : []
  })
  return (
    <>
      <ItemPictures item={key} view={view} />
      {margins.length > 1 && <MarginBars title={`Margins of ${title.toLowerCase()}`} margins={margins} />}
      <TablesOfItem item={key} view={view} />
    </>
  )
}

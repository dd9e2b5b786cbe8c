import { newOptionAddress } from '@/app/addresses'
import { Section } from '@/app/ui/section'
import { readOptionStudies } from '@/lib/queries/option-studies'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ItemDefinition } from '@/shared/catalogue/item'
import { refusal } from '@/shared/policy'
import { StudyTable } from './study-table'

/** The studies of one item, and the way to a new one. */
export async function ItemStudies({
  view,
  item: { key, parameters },
}: {
  view: ProgrammeView
  item: ItemDefinition
}) {
  const studies = await readOptionStudies(view.state.programme.id, key)
  const mayOpen = parameters.length > 0 && !refusal('open-option-study', view.actor)
  if (studies.length === 0 && !mayOpen) return null
  return (
    <Section
      id="options"
      heading="Option studies"
      aside={mayOpen && <a href={newOptionAddress(view.code, [key])}>Compare options</a>}
    >
      {studies.length > 0 ? (
        <StudyTable view={view} caption="Studies of this item" studies={studies} />
      ) : (
        <p>None yet: what stands was settled without alternatives on record.</p>
      )}
    </Section>
  )
}

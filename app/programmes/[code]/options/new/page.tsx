import { forbidden } from 'next/navigation'
import { randomUUID } from 'node:crypto'
import { newOptionAddress, optionsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { readOptionStudy } from '@/lib/queries/option-studies'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { itemsOf, type OptionStudy } from '@/shared/gate/option-study'
import { standing } from '@/shared/gate/study-revision'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import type { ItemDefinition } from '@/shared/catalogue/item'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { refusal } from '@/shared/policy'
import { askedOfItems } from './asked-of-items'
import { itemsInAddress } from '../items-in-address'
import { ChooseItems } from './choose-item'
import { countAsked, FEWEST, MAX } from './count-asked'
import { StudyForm } from './study-form'
import { answersFor } from './answers-for'

export const generateMetadata = programmeTitle(({ code }) => `Compare options, ${code}`)

/** Laying alternatives for a choice side by side, of one item or of several; everything starts from the values of today. */
export default programmePage(async ({ visit, code, searchParams: asked }) => {
  if (refusal('open-option-study', visit.view.actor)) forbidden()
  const from = /^\d{1,6}$/.test(asked['from'] ?? '')
    ? await readOptionStudy(visit.view.state.programme.id, Number(asked['from']))
    : undefined
  const named = from ? itemsOf(from) : itemsInAddress(asked)
  const items = visit.view.state.items
    .map(({ definition }) => definition)
    .filter(({ key }) => named.includes(key))
  const [item] = items
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={optionsAddress(code)}
      place={[
        { text: 'Options', href: optionsAddress(code) },
        { text: 'New study', href: newOptionAddress(code) },
      ]}
      title="Compare options"
      supplement={
        items.length > 1
          ? 'One choice over several items, judged as one'
          : (item?.asks ?? 'Which items does the choice touch?')
      }
      cells={
        item
          ? [
              {
                label: items.length > 1 ? 'Items' : 'Item',
                value: items.map(({ title }) => title).join(', '),
                wide: true,
              },
              {
                label: 'Stage',
                value: [...new Set(items.map(({ stage }) => STAGE_NAMES[stage]))].join(', '),
              },
              {
                label: 'Owner',
                value: [...new Set(items.map(({ owner }) => DEPARTMENT_NAMES[owner]))].join(', '),
              },
            ]
          : [{ label: 'Compares', value: `${FEWEST} to ${MAX} alternatives` }]
      }
    >
      {(view) => {
        return (
          <>
            <ChooseItems
              view={view}
              chosen={items.map(({ key }) => key)}
              count={countAsked(asked['alternatives'])}
            />
            {item && (
              <Study view={view} items={items} from={from} count={countAsked(asked['alternatives'])} />
            )}
          </>
        )
      }}
    </ProgrammeSheet>
  )
})

interface StudyProps {
  view: ProgrammeView
  items: readonly ItemDefinition[]
  from: OptionStudy | undefined
  count: number
}

function Study({ view, items, from, count }: StudyProps) {
  const begin = standing(from?.alternatives ?? [])
  return (
    <StudyForm
      formKey={randomUUID()}
      programme={view.code}
      items={items.map(({ key }) => key)}
      asked={askedOfItems(view, items)}
      begin={begin}
      title={from?.title ?? ''}
      count={Math.max(count, begin.length)}
      answers={answersFor(
        view,
        items.map(({ key }) => key),
      )}
    />
  )
}

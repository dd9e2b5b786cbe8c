import { forbidden } from 'next/navigation'
import { randomUUID } from 'node:crypto'
import { newOptionAddress, optionsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { readOptionStudy } from '@/lib/queries/option-studies'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { OptionStudy } from '@/shared/gate/option-study'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import type { ItemDefinition } from '@/shared/catalogue/item'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { refusal } from '@/shared/policy'
import { ChooseItem } from './choose-item'
import { countAsked, FEWEST, MAX } from './count-asked'
import { StudyForm } from './study-form'
import { answersFor } from './answers-for'

interface NewOptionPageProps {
  params: Promise<{ code: string }>
  searchParams: Promise<{ item?: string; alternatives?: string; from?: string }>
}

/** Laying alternatives for one item side by side; everything starts from the values of today. */
export default async function NewOptionPage({ params, searchParams }: NewOptionPageProps) {
  const { code: given } = await params
  const asked = await searchParams
  const visit = await visitProgramme(given)
  if (refusal('open-option-study', visit.view.actor)) forbidden()
  const code = visit.view.code
  const item = visit.view.state.items.find(({ definition }) => definition.key === asked.item)?.definition
  const from = /^\d{1,6}$/.test(asked.from ?? '')
    ? await readOptionStudy(visit.view.state.programme.id, Number(asked.from))
    : undefined
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
      supplement={item?.asks ?? 'Which item is to be settled?'}
      cells={
        item
          ? [
              { label: 'Item', value: item.title, wide: true },
              { label: 'Stage', value: STAGE_NAMES[item.stage] },
              { label: 'Owner', value: DEPARTMENT_NAMES[item.owner] },
            ]
          : [{ label: 'Compares', value: `${FEWEST} to ${MAX} alternatives` }]
      }
    >
      {(view) => {
        return (
          <>
            <ChooseItem view={view} item={item?.key} count={countAsked(asked.alternatives)} />
            {item && (
              <Study
                view={view}
                item={item}
                from={from?.itemKey === item.key ? from : undefined}
                count={countAsked(asked.alternatives)}
              />
            )}
          </>
        )
      }}
    </ProgrammeSheet>
  )
}

interface StudyProps {
  view: ProgrammeView
  item: ItemDefinition
  from: OptionStudy | undefined
  count: number
}

function Study({ view, item, from, count }: StudyProps) {
  const today = Object.fromEntries(
    item.parameters.flatMap(({ key }) => {
      const value = view.state.facts.values.get(key)
      return value === undefined ? [] : [[key, value] as const]
    }),
  )
  return (
    <StudyForm
      formKey={randomUUID()}
      programme={view.code}
      item={item.key}
      parameters={item.parameters.map(({ key, label, help, shape }) => ({ key, label, help, shape }))}
      today={today}
      begin={from?.alternatives ?? []}
      title={from?.title ?? ''}
      count={from ? Math.max(count, from.alternatives.length) : count}
      answers={answersFor(view, item.key)}
    />
  )
}

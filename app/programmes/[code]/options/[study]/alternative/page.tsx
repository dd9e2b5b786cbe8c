import { forbidden, notFound } from 'next/navigation'
import { randomUUID } from 'node:crypto'
import { optionAddress, optionsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { answersFor } from '@/app/programmes/[code]/options/new/answers-for'
import { askedOfItems } from '@/app/programmes/[code]/options/new/asked-of-items'
import { itemsInAddress } from '@/app/programmes/[code]/options/items-in-address'
import { ChooseMoreItems } from './choose-more-items'
import { readOptionStudy } from '@/lib/queries/option-studies'
import { letterOf } from '@/shared/gate/option-letter'
import { itemsOf } from '@/shared/gate/option-study'
import { standing, studyRevision } from '@/shared/gate/study-revision'
import { refusal } from '@/shared/policy'
import { AlternativeForm } from './alternative-form'

export const generateMetadata = programmeTitle<{ study: string }>(
  ({ code, study }) => `Alternative of option ${study}, ${code}`,
)

/** One more alternative for an open study, or one that it has said anew. */
export default programmePage<{ study: string }>(
  async ({ visit, code, params: { study: number }, searchParams: asked }) => {
    const name = asked['name']
    if (refusal('change-alternative', visit.view.actor)) forbidden()
    const { state } = visit.view
    const study = /^\d{1,6}$/.test(number)
      ? await readOptionStudy(state.programme.id, Number(number))
      : undefined
    if (!study || study.adoption) notFound()
    const stand = standing(study.alternatives)
    const begin = stand.find((one) => one.name === name)
    if (name !== undefined && !begin) notFound()
    const named = [...itemsOf(study), ...itemsInAddress(asked)]
    const items = state.items.map(({ definition }) => definition).filter(({ key }) => named.includes(key))
    const keys = items.map(({ key }) => key)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={optionsAddress(code)}
        place={[
          { text: 'Options', href: optionsAddress(code) },
          { text: `Study ${number}`, href: optionAddress(code, study.number) },
          { text: begin?.name ?? 'Another alternative' },
        ]}
        title={begin ? `Change “${begin.name}”` : 'Add an alternative'}
        supplement={study.title}
        cells={[
          { label: 'Items', value: items.map(({ title }) => title).join(', '), wide: true },
          { label: 'Revision', value: studyRevision(study.alternatives) },
        ]}
      >
        {(view) => (
          <>
            <ChooseMoreItems view={view} study={study.number} name={begin?.name} chosen={keys} />
            <AlternativeForm
              formKey={randomUUID()}
              programme={view.code}
              study={study.number}
              revision={studyRevision(study.alternatives)}
              letter={letterOf(begin ? stand.indexOf(begin) : stand.length)}
              items={keys}
              asked={askedOfItems(view, items)}
              answers={answersFor(view, keys)}
              begin={begin}
            />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)

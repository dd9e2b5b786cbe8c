import { newOptionAddress, optionsAddress, tableAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { Section } from '@/app/ui/section'
import { TakeTable } from '@/app/ui/take-table'
import { readOptionStudies } from '@/lib/queries/option-studies'
import { refusal } from '@/shared/policy'
import { StudyTable } from './study-table'

export const generateMetadata = programmeTitle(({ code }) => `Options, ${code}`)

/** The choices that were laid side by side: the undecided first. */
export default programmePage(async ({ visit, code }) => {
  const studies = await readOptionStudies(visit.view.state.programme.id)
  const open = studies.filter(({ adoption }) => !adoption)
  const decided = studies.filter(({ adoption }) => adoption)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={optionsAddress(code)}
      place={[{ text: 'Options' }]}
      title="Options"
      supplement="Alternatives for a choice side by side: what each would give, undo and cost"
      cells={[
        { label: 'Undecided', value: open.length },
        { label: 'Decided', value: decided.length },
      ]}
    >
      {(view) => {
        const refused = refusal('open-option-study', view.actor)
        return (
          <>
            {!refused && (
              <p>
                <ButtonLink href={newOptionAddress(view.code)} kind="primary">
                  Compare options
                </ButtonLink>
              </p>
            )}
            {studies.length === 0 && (
              <Empty title="No studies yet">
                A study takes a choice, of one item or of several such as laminate, finish and process
                together, and shows what each way of settling it would turn, undo and cost.
                <FirstStep
                  first="First choose what is to be settled."
                  refused={refused}
                  href={newOptionAddress(view.code)}
                  does="Compare the first options"
                />
              </Empty>
            )}
            {open.length > 0 && (
              <Section heading="Undecided">
                <StudyTable view={view} caption="Undecided studies" studies={open} />
              </Section>
            )}
            {decided.length > 0 && (
              <Section heading="Decided">
                <StudyTable view={view} caption="Decided studies" studies={decided} />
              </Section>
            )}
            {studies.length > 0 && (
              <>
                <TakeTable address={tableAddress(code, 'alternatives')} what="All alternatives" />
                <TakeTable address={tableAddress(code, 'alternative-costs')} what="Costs of alternatives" />
              </>
            )}
          </>
        )
      }}
    </ProgrammeSheet>
  )
})

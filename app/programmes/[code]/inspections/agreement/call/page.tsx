import { randomUUID } from 'node:crypto'
import { agreementAddress, blindCallAddress, defectGuideAddress, inspectionsAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, NumberBox, TextBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Notice } from '@/app/ui/notice'
import { SubmitButton } from '@/app/ui/submit-button'
import { refusal } from '@/shared/policy'
import { inspectorCall } from '@/shared/records/kinds/inspector-call'
import { InspectionPlaces } from '../../places'
import { recordBlindCalls } from '../actions'
import { CallRows } from './call-rows'
import { setsToCall } from './sets-to-call'

export const generateMetadata = programmeTitle(({ code }) => `Blind appraisal, ${code}`)

/** The joints of a set, to be called by one person who sees nobody else’s calls. */
export default programmePage<object, { study?: string }>(
  async ({ visit, code, searchParams: { study = '' } }) => {
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={inspectionsAddress(code)}
        place={[
          { text: 'Inspections', href: inspectionsAddress(code) },
          { text: 'Agreement of inspectors', href: agreementAddress(code) },
          { text: 'Start a blind appraisal' },
        ]}
        title={study ? `Blind appraisal of ${study}` : 'Start a blind appraisal'}
        supplement="Each joint as you see it; what others called is not shown here"
      >
        {(view) => {
          const sets = setsToCall(view)
          const set = sets.find((one) => one.study === study)
          const refused = refusal('add-record', view.actor, inspectorCall)
          if (refused) return <Notice kind="info">{refused}</Notice>
          return (
            <>
              <InspectionPlaces code={view.code} at={agreementAddress(view.code)} />
              {sets.length > 0 && (
                <form className="form-find" action={blindCallAddress(view.code)}>
                  <ChoiceBox
                    name="study"
                    label="Set"
                    defaultValue={study}
                    choices={[
                      { value: '', text: 'A new set' },
                      ...sets.map((one) => ({
                        value: one.study,
                        text: `${one.study}, ${one.joints.length} joints`,
                      })),
                    ]}
                  />
                  <button type="submit" className="button button-quiet">
                    Take this set
                  </button>
                </form>
              )}
              <CommandForm
                key={study}
                action={recordBlindCalls}
                formKey={randomUUID()}
                hidden={{ programme: view.code, ...(set && { study }) }}
                label="Call the set"
                className="form-stack"
              >
                <div className="form-row">
                  {!set && <TextBox name="study" label="Name of the set" required />}
                  <TextBox name="inspector" label="Inspector" defaultValue={view.actor.name} required />
                  <NumberBox
                    name="round"
                    label="Round"
                    defaultValue={String((set?.roundsOf.get(view.actor.name) ?? 0) + 1)}
                    required
                  />
                  <TextBox
                    name="calledOn"
                    type="date"
                    label="On"
                    defaultValue={view.state.facts.today}
                    required
                  />
                </div>
                <CallRows joints={set?.joints ?? []} />
                <p className="field-hint">
                  s is sound; a kind by its first letters. Enter goes to the next joint.{' '}
                  <a href={defectGuideAddress(view.code)}>Guide to defects</a>
                </p>
                <SubmitButton>Save results</SubmitButton>
              </CommandForm>
            </>
          )
        }}
      </ProgrammeSheet>
    )
  },
)

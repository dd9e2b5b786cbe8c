import { randomUUID } from 'node:crypto'
import { companyRulesAddress, parameterAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { keepOwnValue, takePreferredValue } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { ParameterValue } from '@/app/ui/parameter-value'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findParameter } from '@/shared/catalogue/standard-plan'
import type { PreferenceDifference } from '@/shared/company-rules/preference-difference'
import { preferredByTheWorks } from '@/shared/plan/given-reasons'
import type { Parameter } from '@/shared/plan/parameter'
import { refusal } from '@/shared/policy'

interface ValueDifferencesProps {
  view: ProgrammeView
  differences: readonly PreferenceDifference[]
}

/** What the works prefer today and the programme specified otherwise, with the two ways to decide; nothing where it does not differ. */
export function ValueDifferences({ view, differences }: ValueDifferencesProps) {
  const known = differences.flatMap((difference) => {
    const parameter = findParameter(difference.preference.parameter)
    return parameter ? [{ ...difference, parameter }] : []
  })
  if (known.length === 0) return null
  return (
    <Section
      id="preferred-values"
      heading="Against the preferred values of today"
      lead="Nothing changes by itself: take each over as a revision, or keep the programme’s own and say why."
      aside={<a href={`${companyRulesAddress()}#preferences`}>Preferred values</a>}
    >
      <RuledTable
        caption="Differences to the preferred values"
        captionHidden
        narrow="cards-early"
        rows={known}
        rowKey={({ preference }) => preference.id}
        columns={[
          {
            label: 'Parameter',
            names: true,
            cell: ({ parameter }) => (
              <a href={parameterAddress(view.code, parameter.key)}>{parameter.label}</a>
            ),
          },
          {
            label: 'At the works',
            cell: ({ parameter, preference: { value, stated, reason } }) => (
              <>
                <ParameterValue parameter={parameter} value={value} />
                <p>
                  Preferred by {stated.by}, <Day at={stated.at} />. {reason}
                </p>
              </>
            ),
          },
          {
            label: 'In the programme',
            cell: ({ parameter, here }) => <ParameterValue parameter={parameter} value={here.value} />,
          },
          { label: 'Decision', cell: (difference) => <Decision view={view} {...difference} /> },
        ]}
      />
    </Section>
  )
}

function Decision({
  view,
  parameter,
  preference,
  here,
  kept,
}: PreferenceDifference & { view: ProgrammeView; parameter: Parameter }) {
  const refused = refusal('revise-parameter', view.actor, parameter)
  return (
    <>
      {kept && (
        <p>
          Keeps its own: {kept.by}, <Day at={kept.at} />. {kept.reason}
        </p>
      )}
      {refused && !kept && <>open; {refused}</>}
      {!refused && (
        <div className="print-hidden">
          <CommandForm
            action={takePreferredValue}
            formKey={randomUUID()}
            hidden={{
              programme: view.code,
              parameter: parameter.key,
              seen: here.number,
              preferred: JSON.stringify(preference.value),
              reason: preferredByTheWorks(preference.reason),
            }}
            label={`Take over the preferred ${parameter.label}`}
          >
            <SubmitButton kind={kept ? 'quiet' : 'primary'}>Take it over</SubmitButton>
          </CommandForm>
          {!kept && (
            <CommandForm
              action={keepOwnValue}
              formKey={randomUUID()}
              hidden={{ programme: view.code, preference: preference.id }}
              label={`Keep the programme’s own ${parameter.label}`}
            >
              <AnsweredDisclosure summary="Keep the programme’s own">
                <div className="form-narrow">
                  <LinesBox name="reason" label="Why the programme keeps its own" rows={2} required />
                  <SubmitButton kind="quiet">Keep it</SubmitButton>
                </div>
              </AnsweredDisclosure>
            </CommandForm>
          )}
        </div>
      )}
    </>
  )
}

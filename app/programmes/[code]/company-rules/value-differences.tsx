import { companyRulesAddress, parameterAddress } from '@/app/addresses'
import { keepOwnValue, takePreferredValue } from '@/app/forms/command-actions'
import { Day } from '@/app/ui/date'
import { ParameterValue } from '@/app/ui/parameter-value'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findParameter } from '@/shared/catalogue/standard-plan'
import type { PreferenceDifference } from '@/shared/company-rules/preference-difference'
import { preferredByTheWorks } from '@/shared/plan/given-reasons'
import type { Parameter } from '@/shared/plan/parameter'
import { refusal } from '@/shared/policy'
import { Kept, TakeOrKeep } from './take-or-keep'

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
      {kept && <Kept {...kept} />}
      {refused && !kept && <>open; {refused}</>}
      {!refused && (
        <TakeOrKeep
          kept={kept !== null}
          take={{
            action: takePreferredValue,
            hidden: {
              programme: view.code,
              parameter: parameter.key,
              seen: here.number,
              preferred: JSON.stringify(preference.value),
              reason: preferredByTheWorks(preference.reason),
            },
            label: `Take over the preferred ${parameter.label}`,
            text: 'Take it over',
          }}
          keep={{
            action: keepOwnValue,
            hidden: { programme: view.code, preference: preference.id },
            label: `Keep the programme’s own ${parameter.label}`,
          }}
        />
      )}
    </>
  )
}

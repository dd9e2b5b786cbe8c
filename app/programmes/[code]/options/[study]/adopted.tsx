import { parameterAddress } from '@/app/addresses'
import { Moment } from '@/app/ui/date'
import { Facts } from '@/app/ui/facts'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { movedSince, type OptionStudy } from '@/shared/gate/option-study'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { valueDifference } from '@/shared/plan/value-difference'

/** What was adopted, by whom and why, and whether its values are still those of today. */
export function Adopted({ view, study }: { view: ProgrammeView; study: OptionStudy }) {
  const { adoption, alternatives } = study
  const adopted = alternatives.find(({ name }) => name === adoption?.name)
  if (!adoption || !adopted) return null
  const moved = movedSince(adopted, view.state.facts.values)
  return (
    <Section heading="Adopted">
      <Facts
        facts={[
          { label: 'Alternative', value: adopted.name },
          { label: 'By', value: adoption.by },
          {
            label: 'When',
            value: <Moment at={adoption.at} />,
          },
        ]}
      />
      <p className="prose">{adoption.why}</p>
      {moved.length === 0 ? (
        <Notice kind="success" title="Still valid">
          Every value it compares is today’s value.
        </Notice>
      ) : (
        <Notice kind="warning" title="The specification has moved on since">
          <ul className="option-moved">
            {moved.map((key) => (
              <li key={key}>
                <Moved view={view} parameter={key} adopted={adopted.values[key]} />
              </li>
            ))}
          </ul>
        </Notice>
      )}
    </Section>
  )
}

function Moved({
  view,
  parameter: key,
  adopted,
}: {
  view: ProgrammeView
  parameter: string
  adopted: unknown
}) {
  const parameter = findParameter(key)
  const revision = view.state.revisions.get(key)
  const differences = parameter ? valueDifference(parameter, adopted, revision?.value) : []
  return (
    <>
      <a href={parameterAddress(view.code, key)}>{parameter?.label ?? key}</a>: {differences.join('; ')}
      {revision && ` (revision ${revision.number}, ${revision.authorName}: ${revision.reason})`}
    </>
  )
}

import { optionAddress, parameterAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { parameterName, valueInBrief } from '@/shared/commands/named'
import type { OptionStudy } from '@/shared/gate/option-study'
import type { CurrentRevision } from '@/shared/gate/programme-state'
import { GIVEN_AT_OPENING } from '@/shared/plan/given-reasons'
import { fewOf } from './few-of'

const MOST_STUDIES = 6
const MOST_VALUES = 14

/** What was chosen between alternatives, and the values decided last, each with who, when and why. */
export function DecisionsSummed({ view, studies }: { view: ProgrammeView; studies: readonly OptionStudy[] }) {
  return (
    <Section heading="Decisions" lead="Choices between alternatives, and the values decided last.">
      <Choices view={view} studies={studies} />
      <Values view={view} />
    </Section>
  )
}

function Choices({ view: { code }, studies }: { view: ProgrammeView; studies: readonly OptionStudy[] }) {
  const decided = studies.flatMap(({ number, title, adoption }) =>
    adoption ? [{ number, title, ...adoption }] : [],
  )
  const { shown, rest } = fewOf(decided, MOST_STUDIES)
  if (shown.length === 0) return <p>No option study was decided.</p>
  return (
    <>
      <RuledTable
        caption="Choices"
        rows={shown}
        rowKey={({ number }) => number}
        columns={[
          {
            label: 'Study',
            names: true,
            cell: ({ number, title }) => <a href={optionAddress(code, number)}>{title}</a>,
          },
          { label: 'Adopted', cell: ({ name }) => name },
          { label: 'Why', cell: ({ why }) => why },
          { label: 'By', cell: ({ by }) => by },
          { label: 'On', set: 'shrink', cell: ({ at }) => <Day at={at} /> },
        ]}
      />
      {rest}
    </>
  )
}

/** Values that were decided and not only given when the programme was opened, the newest first. */
function Values({ view: { code, state } }: { view: ProgrammeView }) {
  const decided = [...state.revisions.values()]
    .filter(({ reason }) => reason !== GIVEN_AT_OPENING)
    .sort((one, other) => (one.at < other.at ? 1 : -1))
  const { shown, rest } = fewOf<CurrentRevision>(decided, MOST_VALUES)
  if (shown.length === 0) return <p>No value was decided since the programme was opened.</p>
  return (
    <>
      <RuledTable
        caption="Values"
        rows={shown}
        rowKey={({ parameter }) => parameter}
        columns={[
          {
            label: 'Value',
            names: true,
            cell: ({ parameter }) => (
              <a href={parameterAddress(code, parameter)}>{parameterName(parameter)}</a>
            ),
          },
          { label: 'Is', cell: ({ parameter, value }) => valueInBrief(parameter, value) },
          { label: 'Revision', set: 'shrink', cell: ({ number }) => number },
          { label: 'Why', cell: ({ reason }) => reason },
          { label: 'By', cell: ({ authorName }) => authorName },
          { label: 'On', set: 'shrink', cell: ({ at }) => <Day at={at} /> },
        ]}
      />
      {rest}
    </>
  )
}

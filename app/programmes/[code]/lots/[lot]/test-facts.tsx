import { ColumnField } from '@/app/forms/column-field'
import { cellFrom } from '@/app/forms/column-value'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { TestMethod } from '@/shared/methods/test-method'

interface TestFactsProps {
  view: ProgrammeView
  method: TestMethod
  /** What was typed before, by the name of its field. */
  given?: Readonly<Record<string, string | undefined>>
}

/** When, by whom, with what and under which conditions a lot was tested. */
export function TestFacts({ view, method, given = {} }: TestFactsProps) {
  return (
    <div className="form-row">
      <TextBox
        name="testedOn"
        type="date"
        label="Tested on"
        defaultValue={given['testedOn'] ?? view.state.facts.today}
        required
      />
      <TextBox
        name="testedBy"
        label="Tested by"
        defaultValue={given['testedBy'] ?? view.actor.name}
        required
      />
      <InstrumentBox view={view} chosen={given['instrument'] ?? ''} />
      {Object.entries(method.conditions).map(([name, column]) => (
        <ColumnField
          key={name}
          name={`conditions.${name}`}
          column={column}
          value={cellFrom(column, given[`conditions.${name}`] ?? null)}
        />
      ))}
    </div>
  )
}

/** With which instrument of the register it was tested. */
export const InstrumentBox = ({ view, chosen }: { view: ProgrammeView; chosen: string }) => (
  <ChoiceBox
    name="instrument"
    label="Instrument"
    optional
    defaultValue={chosen}
    choices={[
      { value: '', text: 'none named' },
      ...view.state.facts.records.instruments.map(({ id, tag, measures, dueOn, outOfUse }) => ({
        value: id,
        text: `${tag}: ${measures}${outOfUse ? ', out of use' : `, calibrated until ${dueOn}`}`,
      })),
    ]}
  />
)

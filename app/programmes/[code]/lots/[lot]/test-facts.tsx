import { ColumnField } from '@/app/forms/column-field'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { TestMethod } from '@/shared/records/test-method'

/** When, by whom, with what and under which conditions a lot was tested. */
export function TestFacts({ view, method }: { view: ProgrammeView; method: TestMethod }) {
  const { instruments } = view.state.facts.records
  return (
    <div className="form-row">
      <TextBox name="testedOn" type="date" label="Tested on" defaultValue={view.state.facts.today} required />
      <TextBox name="testedBy" label="Tested by" defaultValue={view.actor.name} required />
      <ChoiceBox
        name="instrument"
        label="Instrument"
        optional
        choices={[
          { value: '', text: 'none named' },
          ...instruments.map(({ id, tag, measures }) => ({ value: id, text: `${tag}: ${measures}` })),
        ]}
      />
      {Object.entries(method.conditions).map(([name, column]) => (
        <ColumnField key={name} name={`conditions.${name}`} column={column} />
      ))}
    </div>
  )
}

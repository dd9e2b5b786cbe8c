import { Fragment } from 'react'
import { ColumnField } from '@/app/forms/column-field'
import { cellFrom } from '@/app/forms/column-value'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { works } from '@/lib/settings/works'
import type { TestMethod } from '@/shared/methods/test-method'
import type { Lot } from '@/shared/records/lot'
import type { SpecifiedStart } from '@/shared/lot-tests/conditions-to-start-from'
import type { LotAt } from './lot-at'

interface TestFactsProps {
  at: LotAt
  lot: Lot
  method: TestMethod
  /** What was typed before, by the name of its field. */
  given: Readonly<Record<string, string | undefined>>
}

/** When, by whom, with what and under which conditions a lot was tested. */
export function TestFacts({ at, lot, method, given }: TestFactsProps) {
  const starts = at.starts(lot, method)
  const start = starts[Number(given['start'] ?? 0)] ?? starts[0]
  const { notation } = works()
  return (
    <>
      <StartsToChoose starts={starts} chosen={start} given={given} />
      <div className="form-row">
        <TextBox
          name="testedOn"
          type="date"
          label="Tested on"
          defaultValue={given['testedOn'] ?? at.today}
          required
        />
        <TextBox
          name="testedBy"
          label="Tested by"
          defaultValue={given['testedBy'] ?? at.actor.name}
          required
        />
        <InstrumentBox at={at} chosen={given['instrument'] ?? ''} />
        {Object.entries(method.conditions).map(([name, column]) => (
          <ColumnField
            key={name}
            name={`conditions.${name}`}
            column={column}
            value={cellFrom(column, given[`conditions.${name}`] ?? '', notation) ?? start?.values[name]}
            {...(start && name in start.values && { hint: fromSpecification(column.help) })}
          />
        ))}
      </div>
    </>
  )
}

const fromSpecification = (help: string | undefined): string =>
  [help, 'Filled in from the specification.'].filter(Boolean).join(' ')

interface StartsToChooseProps {
  starts: readonly SpecifiedStart[]
  chosen: SpecifiedStart | undefined
  given: TestFactsProps['given']
}

/** Of several conditions that the programme states, which one the boxes start with, and the ways to the others. */
function StartsToChoose({ starts, chosen, given }: StartsToChooseProps) {
  if (starts.length < 2 || !chosen) return null
  const asked = Object.entries(given).filter((entry): entry is [string, string] => entry[1] !== undefined)
  return (
    <p className="field-hint">
      {starts.length} conditions are stated for this test; the boxes start with: {chosen.message}
      {chosen.tried ? ' (tested already)' : ''}.{' '}
      {starts.map((other, position) =>
        other === chosen ? null : (
          <Fragment key={other.message}>
            <a
              href={`?${new URLSearchParams([...asked.filter(([name]) => name !== 'start'), ['start', String(position)]])}`}
            >
              Start with: {other.message}
            </a>
            {other.tried ? ' (tested already) ' : ' '}
          </Fragment>
        ),
      )}
    </p>
  )
}

/** With which instrument of the register it was tested. */
export const InstrumentBox = ({ at, chosen }: { at: LotAt; chosen: string }) => (
  <ChoiceBox
    name="instrument"
    label="Instrument"
    optional
    defaultValue={chosen}
    choices={[
      { value: '', text: 'none named' },
      ...at.instruments.map(({ id, tag, measures, dueOn, outOfUse }) => ({
        value: id,
        text: `${tag}: ${measures}${outOfUse ? ', out of use' : `, calibrated until ${dueOn}`}`,
      })),
    ]}
  />
)

import { parameterAddress } from '@/app/addresses'
import { ParameterValue } from '@/app/ui/parameter-value'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findParameter } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import { valueDifference } from '@/shared/plan/value-difference'
import type { OptionRow } from './columns'

export const noteRow: OptionRow = {
  key: 'note',
  head: 'In short',
  cell: ({ alternative }) => alternative.note || '–',
}

/** One compared parameter; of a table only what differs from today. */
export function valueRow(view: ProgrammeView, key: string): OptionRow {
  const parameter = findParameter(key)
  const today = view.state.facts.values.get(key)
  return {
    key,
    head: <a href={parameterAddress(view.code, key)}>{parameter?.label ?? key}</a>,
    today: parameter && <ValueToday parameter={parameter} value={today} />,
    cell: ({ values, changes }) =>
      parameter &&
      (changes.has(key) ? (
        <ValueChanged parameter={parameter} today={today} value={values.get(key)} />
      ) : (
        <ValueToday parameter={parameter} value={today} />
      )),
  }
}

function ValueToday({ parameter, value }: { parameter: Parameter; value: unknown }) {
  if (parameter.shape.kind === 'table' && Array.isArray(value))
    return <>{value.length === 1 ? 'its one row' : `its ${value.length} rows`}, as today</>
  return <ParameterValue parameter={parameter} value={value} />
}

function ValueChanged({ parameter, today, value }: { parameter: Parameter; today: unknown; value: unknown }) {
  if (parameter.shape.kind === 'field')
    return (
      <strong>
        <ParameterValue parameter={parameter} value={value} />
      </strong>
    )
  if (today === undefined) return <ParameterValue parameter={parameter} value={value} />
  return (
    <ul className="option-differences">
      {valueDifference(parameter, today, value).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}

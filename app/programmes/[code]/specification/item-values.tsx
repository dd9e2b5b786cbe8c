import { itemAddress, parameterAddress, reviseAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { DepartmentTag } from '@/app/ui/department-tag'
import { Disclosure } from '@/app/ui/disclosure'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import { StatusMark } from '@/app/ui/status-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ItemState } from '@/shared/gate/item-status'
import { mayStayEmpty } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import { refusal } from '@/shared/policy'

interface ItemValuesProps {
  view: ProgrammeView
  state: ItemState
  parameters: readonly Parameter[]
}

/** The values of one item, each on its ruled row; tables stand below their name. */
export function ItemValues({ view, state, parameters }: ItemValuesProps) {
  const { key, title } = state.item.definition
  return (
    <Section
      level={3}
      heading={<a href={itemAddress(view.code, key)}>{title}</a>}
      aside={<StatusMark status={state.status} />}
    >
      <div className="values">
        {parameters.map((parameter) => (
          <ValueRow key={parameter.key} view={view} item={key} parameter={parameter} />
        ))}
      </div>
    </Section>
  )
}

const ROWS_IN_SIGHT = 6

function ValueRow({ view, item, parameter }: { view: ProgrammeView; item: string; parameter: Parameter }) {
  const revision = view.state.revisions.get(parameter.key)
  const value = <ParameterValue parameter={parameter} value={revision?.value} />
  const rows = Array.isArray(revision?.value) ? revision.value.length : 0
  const mayRevise = !refusal('revise-parameter', view.actor, parameter)
  return (
    <div className={`value value-${rows > 0 ? 'table' : 'field'}`}>
      <h4>
        <a href={parameterAddress(view.code, parameter.key)}>{parameter.label}</a>
        {!revision && mayStayEmpty(parameter) && <span className="field-optional"> (optional)</span>}
      </h4>
      <div className="value-now">
        {rows > ROWS_IN_SIGHT ? <Disclosure summary={`${rows} rows`}>{value}</Disclosure> : value}
      </div>
      <p className="value-why">
        <DepartmentTag department={parameter.owner} />{' '}
        {revision && (
          <>
            revision {revision.number}, {revision.authorName}, <Day at={revision.at} />: {revision.reason}
          </>
        )}
      </p>
      {mayRevise && (
        <div className="value-form">
          <a href={reviseAddress(view.code, item, parameter.key)}>
            {revision ? 'Revise' : 'Specify'}
            <span className="sr-only"> {parameter.label}</span>
          </a>
        </div>
      )}
    </div>
  )
}

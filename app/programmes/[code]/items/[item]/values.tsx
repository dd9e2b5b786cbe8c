import { randomUUID } from 'node:crypto'
import { limitAddress, parameterAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { limitsBehind } from '@/shared/gate/cover'
import type { ItemState } from '@/shared/gate/standing'
import { mayStayEmpty } from '@/shared/plan/catalogue'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import type { Parameter } from '@/shared/plan/parameter'
import { rulingOn } from '@/shared/plan/requirement'
import { ReviseForm } from './revise-form'

interface ValuesProps {
  view: ProgrammeView
  state: ItemState
}

/** What the item specifies, each value with who set it and why, and the form to revise it. */
export function Values({ view, state }: ValuesProps) {
  const { parameters } = state.item.definition
  return (
    <>
      {parameters.length > 0 && (
        <Section heading="Values">
          {parameters.map((parameter) => (
            <Value key={parameter.key} view={view} state={state} parameter={parameter} />
          ))}
        </Section>
      )}
      <Limits view={view} state={state} />
    </>
  )
}

function Value({ view, state, parameter }: ValuesProps & { parameter: Parameter }) {
  const revision = view.state.revisions.get(parameter.key)
  const mayRevise = view.actor.leads || view.actor.departments.includes(parameter.owner)
  return (
    <section id={parameter.key} className="value" aria-labelledby={`${parameter.key}-label`}>
      <div className="value-head">
        <h3 id={`${parameter.key}-label`}>
          <a href={parameterAddress(view.code, parameter.key)}>{parameter.label}</a>
          {mayStayEmpty(parameter) && <span className="field-optional"> (may stay empty)</span>}
        </h3>
        <div className="value-now">
          <ParameterValue parameter={parameter} value={revision?.value} />
        </div>
      </div>
      <p className="value-why">
        {revision ? (
          <>
            Revision {revision.number}, {revision.authorName}, <Day at={revision.at} />: {revision.reason}
          </>
        ) : (
          parameter.help
        )}
      </p>
      {mayRevise ? (
        <Disclosure
          summary={revision ? `Revise ${parameter.label}` : `Specify ${parameter.label}`}
          printed={false}
        >
          <ReviseForm
            formKey={randomUUID()}
            programme={view.code}
            item={state.item.definition.key}
            parameterKey={parameter.key}
            value={revision?.value}
            seen={revision?.number ?? 0}
            facts={{
              values: Object.fromEntries(view.state.facts.values),
              requirements: view.state.facts.requirements,
              today: view.state.facts.today,
            }}
          />
        </Disclosure>
      ) : (
        <p className="field-hint">{DEPARTMENT_NAMES[parameter.owner]} specifies this.</p>
      )}
    </section>
  )
}

/** The limits in force here, and which document each comes from. */
function Limits({ view, state }: ValuesProps) {
  const rulings = limitsBehind(state.item).map((limit) => rulingOn(limit, view.state.facts.requirements))
  if (rulings.length === 0) return null
  return (
    <Section heading="Limits in force">
      <RuledTable
        caption="Limits in force"
        captionHidden
        rows={rulings}
        rowKey={({ limit }) => limit.key}
        columns={[
          {
            label: 'Limit',
            names: true,
            cell: ({ limit }) => <a href={limitAddress(view.code, limit.key)}>{limit.label}</a>,
          },
          {
            label: 'Value',
            set: 'number',
            cell: ({ limit, value }) => (
              <>
                {limit.direction} <Quantity value={value} unit={limit.unit} />
              </>
            ),
          },
          { label: 'From', cell: ({ authority, document }) => `${document} (${authority})` },
          {
            label: 'Against the default',
            cell: ({ relaxed, limit, value }) =>
              relaxed ? 'looser' : value === limit.byDefault.value ? 'the default' : 'stricter',
          },
        ]}
      />
    </Section>
  )
}

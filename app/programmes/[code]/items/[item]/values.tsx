import { randomUUID } from 'node:crypto'
import { parameterAddress, tableAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { lapsedByParameter } from '@/shared/gate/lapsed-signatures'
import { specificationFactsFor, type SpecificationFacts } from '@/shared/gate/live-turns'
import type { ItemState } from '@/shared/gate/item-status'
import { mayStayEmpty } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import type { Parameter } from '@/shared/plan/parameter'
import { refusal } from '@/shared/policy'
import { withProposal } from '@/shared/rules/proposal'
import type { FilledIn } from './filled-in'
import { proposalAsked, type Asked } from './proposal-asked'
import { ReviseForm } from './revise-form'

interface ValuesProps {
  view: ProgrammeView
  state: ItemState
  asked: Asked
  filledIn?: FilledIn | undefined
}

/** What the item specifies, each value with who set it and why, and the form to revise it. */
export function Values({ view, state, asked, filledIn }: ValuesProps) {
  const { parameters } = state.item.definition
  if (parameters.length === 0) return null
  const facts = specificationFactsFor(parameters, view.state.facts)
  return (
    <Section id="values" heading="Values">
      <div className="values">
        {parameters.map((parameter, position) => (
          <Value
            key={parameter.key}
            {...{ view, state, asked, filledIn, parameter, facts }}
            above={view.state.revisions.get(parameters[position - 1]?.key ?? '')?.reason}
          />
        ))}
      </div>
    </Section>
  )
}

interface ValueProps extends ValuesProps {
  parameter: Parameter
  facts: SpecificationFacts
}

interface ValueLineProps extends ValueProps {
  /** Why the value above is as it is; the same words are not said twice. */
  above: string | undefined
}

function Value({ view, state, asked, filledIn, parameter, facts, above }: ValueLineProps) {
  const { key, label, owner, shape } = parameter
  const revision = view.state.revisions.get(key)
  return (
    <div id={key} className={`value value-${shape.kind}`}>
      <h3>
        <a href={parameterAddress(view.code, key)}>{label}</a>
        {!revision && mayStayEmpty(parameter) && <span className="field-optional"> (optional)</span>}
      </h3>
      <div className="value-now">
        <ParameterValue
          parameter={parameter}
          value={revision?.value}
          take={tableAddress(view.code, 'parameter', key)}
        />
      </div>
      <p className="value-why">
        {revision ? (
          <>
            Revision {revision.number}, {revision.authorName}, <Day at={revision.at} />
            {revision.reason !== above && `: ${revision.reason}`}
          </>
        ) : (
          <>{DEPARTMENT_NAMES[owner]} specifies this.</>
        )}
      </p>
      <Revising {...{ view, state, asked, filledIn, parameter, facts }} />
    </div>
  )
}

/** The form, for the parameter's owner and the lead. */
function Revising({ view, state, asked, filledIn, parameter, facts }: ValueProps) {
  const { key, label, help, shape } = parameter
  if (refusal('revise-parameter', view.actor, parameter)) return null
  const revision = view.state.revisions.get(key)
  const proposal = proposalAsked(asked, key)
  const filled = filledIn?.parameter === key ? filledIn : undefined
  return (
    <div className="value-form">
      <ReviseForm
        // Once somebody revised it, the boxes begin with the newer value.
        key={`${key} ${revision?.number}`}
        formKey={randomUUID()}
        programme={view.code}
        item={state.item.definition.key}
        parameter={{ key, label, help, shape }}
        value={filled ? filled.value : proposal ? withProposal(revision?.value, proposal) : revision?.value}
        open={asked.revise === key}
        proposed={filled?.from ?? (proposal ? 'remedy' : undefined)}
        reason={filled?.reason}
        seen={revision?.number ?? 0}
        facts={facts}
        reach={lapsedByParameter(key, view.judgement)}
      />
    </div>
  )
}

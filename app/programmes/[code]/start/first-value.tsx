import { randomUUID } from 'node:crypto'
import { findingAddress, itemAddress, parameterAddress } from '@/app/addresses'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Sign } from '@/app/ui/sign'
import { verdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { lapsedByParameter } from '@/shared/gate/lapsed-signatures'
import type { SpecificationFacts } from '@/shared/gate/live-turns'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import type { FirstOfProgramme } from '../first-values-of'
import { ReviseForm } from '../items/[item]/revise-form'

interface FirstValueProps {
  view: ProgrammeView
  value: FirstOfProgramme
  facts: SpecificationFacts
  /** The first that this person can state: its form stands open. */
  open: boolean
  /** The key of the one after it that they can state, '' after the last. */
  next: string
}

/** One of the first values: stated, or with its form; and the checks that it opens. */
export function FirstValue({
  view,
  value: { parameter, item, opens, stated },
  facts,
  open,
  next,
}: FirstValueProps) {
  const { key, label, help, owner, shape } = parameter
  const refused = refusal('revise-parameter', view.actor, parameter)
  return (
    <li id={key} className="first-value" data-stated={stated}>
      <div>
        <h2>
          {stated && <Sign kind="success" />}
          <a href={parameterAddress(view.code, key)}>{label}</a>
          {stated && <span className="sr-only">, stated</span>}
        </h2>
        <p className="faint">
          Of <a href={itemAddress(view.code, item.key)}>{item.title}</a>
        </p>
        {stated && <ParameterValue parameter={parameter} value={view.state.facts.values.get(key)} />}
        {!stated && refused && <p>{DEPARTMENT_NAMES[owner]} or the programme’s lead states it.</p>}
        {!stated && !refused && (
          <ReviseForm
            formKey={randomUUID()}
            programme={view.code}
            item={item.key}
            firstValue={{ next }}
            parameter={{ key, label, help, shape }}
            value={undefined}
            open={open}
            proposed={undefined}
            reason="Stated first, as far as it is known"
            seen={0}
            facts={facts}
            reach={lapsedByParameter(key, view.judgement)}
          />
        )}
      </div>
      <div>
        <p className="faint">Opens</p>
        <ul>
          {opens.map(({ id, title }) => {
            const verdict = view.judgement.findings.get(id)?.verdict
            return (
              <li key={id}>
                <a href={findingAddress(view.code, id)}>{title}</a> {verdict && verdictMark(verdict)}
              </li>
            )
          })}
        </ul>
      </div>
    </li>
  )
}

import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { requestDeviation } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, NumberBox, PickBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { governingRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { limitsRead } from '@/shared/rules/limits-read'
import type { AnyRule } from '@/shared/rules/rule'
import { PermissionBounds } from './permission-bounds'

interface DeviationFormsProps {
  view: ProgrammeView
  item: string
  rule: AnyRule
}

/** Asking before the fact: to depart from a limit so far, or to depart at all for named things. */
export function DeviationForms({ view, item, rule }: DeviationFormsProps) {
  const limits = limitsRead(rule)
  const hidden = { programme: view.code, item, rule: rule.id }
  return (
    <>
      {limits.length > 0 && (
        <CommandForm
          action={requestDeviation}
          formKey={randomUUID()}
          hidden={{ ...hidden, 'departure.kind': 'limit' }}
          label="Ask to depart from a limit"
        >
          <AnsweredDisclosure summary="Ask beforehand to depart from a limit">
            <div className="form-narrow">
              <ChoiceBox
                name="departure.limit"
                label="Limit"
                choices={limits.map((limit) => ({
                  value: limit.key,
                  text: `${limit.label}: ${limit.direction} ${formatQuantity(governingRequirement(limit, view.state.facts.requirements).value, limit.unit, 6)}`,
                }))}
              />
              <NumberBox
                name="departure.value"
                label="As far as"
                hint="In the unit of the limit. A finding that would pass with this value in its place is let pass."
                required
              />
              <LinesBox name="why" label="Why it is tolerable" rows={3} required />
              <PermissionBounds />
              <SubmitButton kind="quiet">Ask for a deviation permit</SubmitButton>
            </div>
          </AnsweredDisclosure>
        </CommandForm>
      )}
      <CommandForm
        action={requestDeviation}
        formKey={randomUUID()}
        hidden={{ ...hidden, 'departure.kind': 'parts' }}
        label="Ask to depart for named things"
      >
        <AnsweredDisclosure summary="Ask beforehand to depart for named lots, joints or other things">
          <div className="form-narrow">
            <PickBox
              name="departure.way"
              label="What is permitted"
              choices={[
                { value: 'fails', text: 'that it fails' },
                { value: 'undetermined', text: 'that it stays undetermined' },
              ]}
              required
            />
            <LinesBox
              name="departure.parts"
              label="For which"
              hint="One name a line, as the finding will name it: the code of a lot, a component, a line. Left empty: for whatever the check looks at."
              rows={3}
              optional
            />
            <LinesBox name="why" label="Why it is tolerable" rows={3} required />
            <PermissionBounds />
            <SubmitButton kind="quiet">Ask for a deviation permit</SubmitButton>
          </div>
        </AnsweredDisclosure>
      </CommandForm>
    </>
  )
}

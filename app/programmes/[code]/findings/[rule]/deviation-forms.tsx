import { randomUUID } from 'node:crypto'
import type { ReactNode } from 'react'
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
        <DepartureForm
          hidden={{ ...hidden, 'departure.kind': 'limit' }}
          label="Ask to depart from a limit"
          summary="Ask beforehand to depart from a limit"
        >
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
        </DepartureForm>
      )}
      <DepartureForm
        hidden={{ ...hidden, 'departure.kind': 'parts' }}
        label="Ask to depart for named things"
        summary="Ask beforehand to depart for named lots, joints or other things"
      >
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
      </DepartureForm>
    </>
  )
}

interface DepartureFormProps {
  hidden: Readonly<Record<string, string>>
  label: string
  summary: string
  /** How far it may depart. */
  children: ReactNode
}

function DepartureForm({ hidden, label, summary, children }: DepartureFormProps) {
  return (
    <CommandForm action={requestDeviation} formKey={randomUUID()} hidden={hidden} label={label}>
      <AnsweredDisclosure summary={summary}>
        <div className="form-narrow">
          {children}
          <LinesBox name="why" label="Why it is tolerable" rows={3} required />
          <PermissionBounds />
          <SubmitButton kind="quiet">Ask for a deviation permit</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}

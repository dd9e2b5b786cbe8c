import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { askAction } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, TextBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findItem } from '@/shared/catalogue/standard-plan'
import { ACTION_KINDS } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { partRefusal } from '@/shared/policy'

interface AskFormProps {
  view: ProgrammeView
  /** The items that the question may be about; chosen where there are several. */
  items: readonly string[]
  /** The study within which it is asked. */
  study?: number
  /** The comment that becomes this action. */
  comment?: number | undefined
  /** What the question begins with, such as the lot it is about. */
  beginning?: string
  /** What opens it, where another programme's stands beside it. */
  summary?: string
}

/** Asks another department, or one person of it. */
export function AskForm({
  view,
  items,
  study,
  comment,
  beginning,
  summary = 'Ask another department',
}: AskFormProps) {
  const { actor, state, code } = view
  const [only, ...more] = items
  if (!only || actor.departments.length === 0 || partRefusal('ask-action', actor)) return null
  const departments = (choices: readonly (typeof DEPARTMENTS)[number][]) =>
    choices.map((value) => ({ value, text: DEPARTMENT_NAMES[value] }))
  const named = state.members.filter(({ personId }) => personId !== actor.personId)
  return (
    <CommandForm
      action={askAction}
      formKey={randomUUID()}
      hidden={{
        programme: code,
        ...(more.length === 0 && { item: only }),
        ...(study !== undefined && { study }),
        ...(comment !== undefined && { 'bornOf.kind': 'comment', 'bornOf.comment': comment }),
      }}
      label={summary}
    >
      <AnsweredDisclosure
        summary={comment === undefined ? summary : `Ask comment ${comment} as an action`}
        open={comment !== undefined}
      >
        <div className="form-narrow">
          {more.length > 0 && (
            <ChoiceBox
              name="item"
              label="About the item"
              choices={items.map((value) => ({ value, text: findItem(value)?.title ?? value }))}
            />
          )}
          <ChoiceBox name="from" label="For" choices={departments(actor.departments)} />
          <ChoiceBox
            name="to"
            label="To"
            choices={departments(
              DEPARTMENTS.filter(
                (department) => !actor.departments.includes(department) || actor.departments.length > 1,
              ),
            )}
          />
          <ChoiceBox
            name="person"
            label="Person"
            optional
            choices={[
              { value: '', text: 'anybody of the department' },
              ...named.map(({ personId, name, department }) => ({
                value: personId,
                text: `${name}, ${DEPARTMENT_NAMES[department].toLowerCase()}`,
              })),
            ]}
          />
          <ChoiceBox
            name="kind"
            label="About"
            choices={ACTION_KINDS.map((value) => ({ value, text: value }))}
          />
          <LinesBox name="question" label="Question" rows={3} defaultValue={beginning} required />
          <TextBox name="dueOn" type="date" label="Answer wanted by" required />
          <SubmitButton kind="quiet">Ask</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}

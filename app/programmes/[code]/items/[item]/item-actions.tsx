import { randomUUID } from 'node:crypto'
import { actionAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { actionStatus } from '@/shared/gate/action-status'
import { ACTION_KINDS } from '@/shared/gate/programme-state'
import type { ItemState } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { partRefusal } from '@/shared/policy'
import { askAction } from '@/app/forms/command-actions'

/** Questions about the item to other departments, and the form to ask one. */
export function ItemActions({
  view,
  state,
  comment,
}: {
  view: ProgrammeView
  state: ItemState
  /** The number of a comment that is to become an action. */
  comment?: string | undefined
}) {
  const bornOf = /^\d{1,6}$/.test(comment ?? '') ? Number(comment) : undefined
  const { key } = state.item.definition
  const actions = view.state.actions.filter((action) => action.itemKey === key)
  const refused = partRefusal('ask-action', view.actor)
  if (actions.length === 0 && refused) return null
  const departments = (choices: readonly (typeof DEPARTMENTS)[number][]) =>
    choices.map((value) => ({ value, text: DEPARTMENT_NAMES[value] }))
  return (
    <Section id="actions" heading="Questions to other departments">
      {actions.length > 0 && (
        <RuledTable
          caption="Actions about this item"
          captionHidden
          rows={actions}
          rowKey={({ number }) => number}
          columns={[
            { label: 'No.', set: 'shrink', cell: ({ number }) => number },
            {
              label: 'Question',
              names: true,
              cell: ({ number, question }) => <a href={actionAddress(view.code, number)}>{question}</a>,
            },
            { label: 'To', set: 'shrink', cell: ({ to }) => DEPARTMENT_NAMES[to] },
            { label: 'Due', set: 'shrink', cell: ({ dueOn }) => <Day at={dueOn} /> },
            { label: 'Status', set: 'shrink', cell: actionStatus },
          ]}
        />
      )}
      {!refused && view.actor.departments.length > 0 && (
        <CommandForm
          action={askAction}
          formKey={randomUUID()}
          hidden={{
            programme: view.code,
            item: key,
            ...(bornOf && { 'bornOf.kind': 'comment', 'bornOf.comment': bornOf }),
          }}
          label="Ask another department"
        >
          <AnsweredDisclosure
            summary={bornOf ? `Ask comment ${bornOf} as an action` : 'Ask another department'}
            open={bornOf !== undefined}
          >
            <div className="form-narrow">
              <ChoiceBox name="from" label="For" choices={departments(view.actor.departments)} />
              <ChoiceBox
                name="to"
                label="To"
                choices={departments(
                  DEPARTMENTS.filter(
                    (department) =>
                      !view.actor.departments.includes(department) || view.actor.departments.length > 1,
                  ),
                )}
              />
              <ChoiceBox
                name="kind"
                label="About"
                choices={ACTION_KINDS.map((value) => ({ value, text: value }))}
              />
              <LinesBox name="question" label="Question" rows={3} required />
              <TextBox name="dueOn" type="date" label="Answer wanted by" required />
              <SubmitButton kind="quiet">Ask</SubmitButton>
            </div>
          </AnsweredDisclosure>
        </CommandForm>
      )}
    </Section>
  )
}

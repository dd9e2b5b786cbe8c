import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, PickBox } from '@/app/forms/fields'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { isClosed, waitsFor, wantsAnswer } from '@/shared/gate/action-status'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { partRefusal, refusal } from '@/shared/policy'
import { AnswerAmounts } from './answer-amounts'
import { acceptAnswer, answerAction, returnAnswer, withdrawAction } from '@/app/forms/command-actions'

interface FormsProps {
  view: ProgrammeView
  action: ActionEntry
}

const hiddenOf = ({ view, action }: FormsProps) => ({ programme: view.code, action: action.number })

/** For the department that was asked. */
export function AnswerForm({ alternatives, ...props }: FormsProps & { alternatives: readonly string[] }) {
  const { view, action } = props
  if (!wantsAnswer(action) || partRefusal('answer-action', view.actor)) return null
  const refused = refusal('answer-action', view.actor, action)
  if (refused) return <p className="field-hint">{refused}</p>
  return (
    <Section heading="Your answer">
      <CommandForm
        action={answerAction}
        formKey={randomUUID()}
        hidden={hiddenOf(props)}
        label="Your answer"
        className="form-stack"
      >
        <PickBox
          name="feasible"
          label="Is it feasible?"
          choices={[
            { value: 'yes', text: 'Yes' },
            { value: 'with changes', text: 'With changes' },
            { value: 'no', text: 'No' },
            { value: 'not asked', text: 'Not applicable' },
          ]}
        />
        <AnswerAmounts alternatives={alternatives} wanted={action.kind === 'cost'} />
        <LinesBox name="comment" label="Answer in words" required />
        <SubmitButton>Send the answer</SubmitButton>
      </CommandForm>
    </Section>
  )
}

/** For the department that asked. */
export function DecisionForms(props: FormsProps) {
  const { view, action } = props
  if (waitsFor(action) !== 'acceptance' || partRefusal('accept-answer', view.actor)) return null
  const refused = refusal('accept-answer', view.actor, action)
  if (refused) return <p className="field-hint">{refused}</p>
  return (
    <Section heading="Does this answer the question?">
      <CommandForm
        action={acceptAnswer}
        formKey={randomUUID()}
        hidden={hiddenOf(props)}
        label="Accept the answer"
        className="form-narrow"
      >
        <LinesBox name="comment" label="Comment" rows={2} optional />
        <SubmitButton>Accept the answer</SubmitButton>
      </CommandForm>
      <Disclosure summary="It does not: return it" printed={false}>
        <CommandForm
          action={returnAnswer}
          formKey={randomUUID()}
          hidden={hiddenOf(props)}
          label="Return the answer"
          className="form-narrow"
        >
          <LinesBox name="comment" label="What is missing" rows={2} required />
          <SubmitButton kind="quiet">Return the answer</SubmitButton>
        </CommandForm>
      </Disclosure>
    </Section>
  )
}

export function WithdrawForm(props: FormsProps) {
  const { view, action } = props
  if (isClosed(action) || refusal('withdraw-action', view.actor, action)) return null
  return (
    <Disclosure summary="Withdraw the action" printed={false}>
      <CommandForm
        action={withdrawAction}
        formKey={randomUUID()}
        hidden={hiddenOf(props)}
        label="Withdraw the action"
        className="form-narrow"
      >
        <LinesBox name="reason" label="Why it needs no answer any more" rows={2} required />
        <SubmitButton kind="danger">Withdraw the action</SubmitButton>
      </CommandForm>
    </Disclosure>
  )
}

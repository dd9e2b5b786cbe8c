import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import {
  STEP_NAMES,
  type Nonconformity,
  type NonconformityStep,
} from '@/shared/nonconformities/nonconformity'
import { standingOf, type Standing } from '@/shared/nonconformities/standing'
import { refusal } from '@/shared/policy'
import { withdrawStep } from '../actions'

interface StepsProps {
  view: ProgrammeView
  nonconformity: Nonconformity
}

/** What the standing asks for next. */
const NEXT: Readonly<Record<Standing, string>> = {
  open: 'Contain it: what keeps it from going further until it is corrected?',
  contained: 'Find the cause, and correct what was found.',
  corrected: 'Somebody other than who corrected it checks that it helped.',
  checked: 'Corrected, and found to have helped.',
}

/** What was done about it, in the order it was recorded. */
export function Steps({ view, nonconformity: { steps } }: StepsProps) {
  const standing = standingOf(steps)
  const causeKnown = steps.some(({ kind, withdrawn }) => kind === 'cause' && !withdrawn)
  return (
    <Section id="steps" heading="What was done">
      <Notice kind={standing === 'checked' ? 'success' : 'info'} title={NEXT[standing]}>
        {!causeKnown && standing !== 'open' && 'No cause is on record: without it, it can come again.'}
      </Notice>
      {steps.length === 0 ? (
        <Empty title="Nothing is on record yet">First say what was done at once with what was found.</Empty>
      ) : (
        <RuledTable
          caption="What was done"
          captionHidden
          rows={steps}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Step', names: true, cell: ({ kind }) => STEP_NAMES[kind] },
            { label: 'What', cell: (step) => <What step={step} /> },
            { label: 'On', set: 'shrink', cell: ({ doneOn }) => <Day at={doneOn} /> },
            { label: 'Recorded by', cell: ({ addedBy }) => addedBy },
            { label: 'Withdraw', cell: (step) => <Withdraw view={view} step={step} /> },
          ]}
        />
      )}
    </Section>
  )
}

function What({ step: { text, helped, withdrawn } }: { step: NonconformityStep }) {
  return (
    <>
      {helped !== null && <strong>{helped ? 'It helped. ' : 'It did not help. '}</strong>}
      {withdrawn ? <del>{text}</del> : text}
      {withdrawn && (
        <span className="block faint">
          Withdrawn by {withdrawn.by}, <Day at={withdrawn.at} />: {withdrawn.why}
        </span>
      )}
    </>
  )
}

function Withdraw({ view, step }: { view: ProgrammeView; step: NonconformityStep }) {
  if (step.withdrawn || refusal('withdraw-step', view.actor, step)) return <>–</>
  return (
    <CommandForm
      action={withdrawStep}
      formKey={randomUUID()}
      hidden={{ programme: view.code, step: step.id }}
      label={`Withdraw this ${STEP_NAMES[step.kind].toLowerCase()}`}
      className="print-hidden"
    >
      <AnsweredDisclosure summary="Withdraw">
        <div className="form-narrow">
          <TextBox name="reason" label="Why" required />
          <SubmitButton kind="danger">Withdraw it</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}

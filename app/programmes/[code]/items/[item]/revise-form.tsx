'use client'
import { useRef, useState } from 'react'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { rowsFromForm, valueFromForm } from '@/app/forms/column-value'
import { CommandForm, useFormState } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { ValueBoxes } from '@/app/forms/value-boxes'
import { SubmitButton } from '@/app/ui/submit-button'
import type { LapsedSignatures } from '@/shared/gate/lapsed-signatures'
import type { SpecificationFacts } from '@/shared/gate/live-turns'
import type { ParameterShape } from '@/shared/plan/parameter'
import { reviseParameter } from './actions'
import { LiveFindings } from './live-findings'
import { WhatWouldChange } from './what-would-change'

/** Where the value in the boxes comes from, when it is not the one that stands. */
const FILLED_IN = {
  remedy: 'Filled in as the remedy proposes; nothing is saved yet.',
  'board files':
    'Filled in from the board files. What they cannot know stands as it stood, or is blank to be filled in; nothing is saved yet.',
  'parts list':
    'Filled in from the parts list and its parts. What no part says stands as it stood, or is blank to be filled in; nothing is saved yet.',
} as const

interface ReviseFormProps {
  formKey: string
  programme: string
  item: string
  /** One of the first values of a programme: which of them comes after it, if any. */
  firstValue?: { readonly next: string }
  /** The change notice that the value is put into, instead of being saved. */
  notice?: number
  /** As much of the parameter's declaration as can be sent to the browser. */
  parameter: { key: string; label: string; help: string; shape: ParameterShape }
  /** The value the boxes start with: as it stands, or as a remedy proposes. */
  value: unknown
  /** The page was asked for with this form open, and with a proposal in it. */
  open: boolean
  proposed: keyof typeof FILLED_IN | undefined
  /** What the reason starts with. */
  reason?: string | undefined
  seen: number
  facts: SpecificationFacts
  reach: LapsedSignatures
}

/** The form of one parameter, folded away under its value. */
export function ReviseForm({
  formKey,
  programme,
  item,
  firstValue,
  parameter,
  open,
  ...rest
}: ReviseFormProps) {
  const { label } = parameter
  return (
    <CommandForm
      action={reviseParameter}
      formKey={formKey}
      hidden={{
        programme,
        item,
        parameter: parameter.key,
        ...(firstValue && { from: 'first values', next: firstValue.next }),
        ...(rest.notice !== undefined && { notice: rest.notice }),
      }}
      label={`Revise ${label}`}
    >
      <AnsweredDisclosure
        open={open}
        summary={
          <>
            {rest.notice === undefined && (
              <>
                {rest.seen > 0 ? 'Revise' : 'Specify'}
                <span className="sr-only"> {label}</span>
              </>
            )}
            {rest.notice !== undefined && <>Propose another value of {label}</>}
          </>
        }
      >
        <Fields parameter={parameter} {...rest} />
      </AnsweredDisclosure>
    </CommandForm>
  )
}

type FieldsProps = Omit<ReviseFormProps, 'formKey' | 'programme' | 'item' | 'firstValue' | 'open'>

function Fields({
  notice,
  parameter: { key, label, help, shape },
  value,
  proposed,
  reason,
  seen,
  facts,
  reach,
}: FieldsProps) {
  const [draft, setDraft] = useState<unknown>(proposed ? value : undefined)
  const state = useFormState()
  const { fields } = state
  const [typedAfter, setTypedAfter] = useState<typeof state>()
  /** A preview is of what was sent: typing on takes it away, and the live findings come instead. */
  const preview = typedAfter === state ? undefined : state.preview
  const boxes = useRef<HTMLDivElement>(null)
  /** After a refusal that somebody else revised it meanwhile: the revision that saving again would replace. */
  const seenNow = Number(fields['seen'] ?? seen)
  const read = () => {
    const form = boxes.current?.closest('form')
    if (form) setDraft(valueIn(new FormData(form), shape))
    setTypedAfter(state)
  }
  return (
    <div className={`revise revise-${shape.kind}`}>
      <div className="form-stack">
        <input type="hidden" name="seen" value={seenNow} />
        {proposed && <p className="field-hint">{FILLED_IN[proposed]}</p>}
        <div ref={boxes} onInput={read}>
          <ValueBoxes label={label} help={help} shape={shape} value={value} />
        </div>
        <LinesBox
          name="reason"
          label="Why"
          hint="It stands in the trail beside the value."
          rows={2}
          defaultValue={reason}
          required
        />
        <div className="form-actions">
          <SubmitButton name="intent" value="save">
            {notice === undefined ? `Save as revision ${seenNow + 1}` : `Put it in notice ${notice}`}
          </SubmitButton>
          <SubmitButton name="intent" value="preview" kind="quiet">
            Preview
          </SubmitButton>
        </div>
      </div>
      <div className="form-stack">
        {preview && (
          <div className="would-live" role="status">
            <p className="would-head">If this value is saved</p>
            <WhatWouldChange
              turned={preview.turned}
              moved={preview.moved}
              reach={preview}
              revived={preview.revived}
            />
          </div>
        )}
        {!preview && <LiveFindings parameter={key} draft={draft} facts={facts} reach={reach} />}
      </div>
    </div>
  )
}

const valueIn = (form: FormData, shape: ParameterShape): unknown =>
  shape.kind === 'field'
    ? valueFromForm(form, 'value', shape.column)
    : rowsFromForm(form, 'value', shape.columns)

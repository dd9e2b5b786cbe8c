'use client'
import { useRef, useState } from 'react'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { cellFrom, rowsFromForm } from '@/app/forms/column-value'
import { LinesBox } from '@/app/forms/fields'
import { TableEditor } from '@/app/forms/table-editor'
import { SubmitButton } from '@/app/ui/submit-button'
import { findParameter } from '@/shared/plan/catalogue'
import type { Parameter } from '@/shared/plan/parameter'
import type { Requirement } from '@/shared/plan/requirement'
import { reviseParameter } from './actions'
import { LiveFindings } from './live-findings'

interface ReviseFormProps {
  formKey: string
  programme: string
  item: string
  parameterKey: string
  value: unknown
  seen: number
  /** What rules need to judge in the browser: the specification as it stands. */
  facts: { values: Readonly<Record<string, unknown>>; requirements: readonly Requirement[]; today: string }
}

/** The form of one parameter; while it is filled in, the same rules that judge on the server say what would turn. */
export function ReviseForm({ formKey, programme, item, parameterKey, value, seen, facts }: ReviseFormProps) {
  const parameter = findParameter(parameterKey)
  const [draft, setDraft] = useState<unknown>(undefined)
  const fields = useRef<HTMLDivElement>(null)
  if (!parameter) return null
  const { shape } = parameter
  return (
    <CommandForm
      action={reviseParameter}
      formKey={formKey}
      hidden={{ programme, item, parameter: parameterKey, seen }}
      label={`Revise ${parameter.label}`}
    >
      <p className="field-hint">{parameter.help}</p>
      <div
        ref={fields}
        onInput={() => {
          const form = fields.current?.closest('form')
          if (form) setDraft(valueIn(new FormData(form), parameter))
        }}
      >
        {shape.kind === 'field' ? (
          <ColumnField name="value" column={shape.column} value={value} hint=" " />
        ) : (
          <TableEditor
            name="value"
            caption={parameter.label}
            columns={shape.columns}
            rows={(value as readonly Record<string, unknown>[] | undefined) ?? []}
            maxRows={shape.maxRows}
          />
        )}
      </div>
      <LiveFindings parameter={parameter} draft={draft} facts={facts} />
      <LinesBox name="reason" label="Why" hint="It stands in the trail beside the value." rows={2} required />
      <SubmitButton>Save as revision {seen + 1}</SubmitButton>
    </CommandForm>
  )
}

const valueIn = (form: FormData, { shape }: Parameter): unknown =>
  shape.kind === 'field'
    ? cellFrom(shape.column, form.get('value'))
    : rowsFromForm(form, 'value', shape.columns)

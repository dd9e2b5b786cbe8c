'use client'
import { useId } from 'react'
import { useFormState } from '@/app/forms/command-form'
import { TickBox } from '@/app/forms/fields'
import { Sign } from '@/app/ui/sign'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'

/** The departments that must agree, one or more; `item` is where the command's input holds the item. */
export function ApproversBoxes({ item = 'item' }: { item?: string }) {
  const { fields } = useFormState()
  const wrong = fields[`${item}.approvers`]
  const id = useId()
  return (
    <fieldset className="field field-fieldset" aria-describedby={`${id}-hint ${wrong ? `${id}-error` : ''}`}>
      <legend className="field-label">Departments that must approve it</legend>
      <p id={`${id}-hint`} className="field-hint">
        Two or more, so that nobody agrees to their own work alone.
      </p>
      <div className="field-ticks">
        {DEPARTMENTS.map((department) => (
          <TickBox
            key={department}
            name={`${item}.approvers.${department}`}
            label={DEPARTMENT_NAMES[department]}
          />
        ))}
      </div>
      {wrong && (
        <p id={`${id}-error`} className="field-error">
          <Sign kind="refusal" size={16} />
          <span>{wrong}</span>
        </p>
      )}
    </fieldset>
  )
}

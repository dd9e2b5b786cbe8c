'use client'
import { useEffect, useRef, useState, type ChangeEvent, type ReactNode } from 'react'
import { CommandForm, useFormState } from '@/app/forms/command-form'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { useHydrated } from '@/app/forms/hydrated'
import { SubmitButton } from '@/app/ui/submit-button'
import type { LineKind } from '@/shared/reviews/review'
import { writeLine } from '../actions'
import type { MinuteChoices } from './minute-choices'

/** One line after another: Enter records the line, and the next stands ready about the same point. */
export function MinuteForm(choices: MinuteChoices) {
  if (!choices.mayWrite) return null
  return (
    <section id="write" className="print-hidden" aria-label="The next line">
      <CommandForm
        key={choices.written}
        action={writeLine}
        formKey={choices.formKey}
        hidden={choices.hidden}
        label="Write a line of minutes"
        className="form-stack minute-form"
      >
        <LineBoxes {...choices} />
      </CommandForm>
    </section>
  )
}

const FIRST_LETTERS: Readonly<Record<string, LineKind>> = {
  p: 'point',
  n: 'note',
  d: 'decision',
  a: 'action',
}

function LineBoxes(choices: MinuteChoices) {
  const { typed } = useFormState()
  const kindOf = (name: string | undefined) => choices.kinds.find(({ value }) => value === name)?.value
  const [as, setAs] = useState<LineKind>(kindOf(typed['as']) ?? kindOf(choices.as) ?? 'note')
  const box = useRef<HTMLDivElement>(null)
  const hydrated = useHydrated()
  useEffect(() => {
    if (choices.written > 0) box.current?.querySelector<HTMLInputElement>('[name="text"]')?.focus()
  }, [choices.written])
  /** "a: …" at the beginning makes the line an action, and so on; the letter is taken away. */
  const readLetter = ({ target }: ChangeEvent<HTMLInputElement>) => {
    const [, letter = '', rest = ''] = /^([pnda]):\s*(.*)$/is.exec(target.value) ?? []
    const kind = kindOf(FIRST_LETTERS[letter.toLowerCase()])
    if (!kind) return
    setAs(kind)
    target.value = rest
  }
  return (
    <>
      <ChoiceBox name="about" label="About" choices={choices.abouts} defaultValue={choices.about} />
      <fieldset className="field field-fieldset minute-kinds">
        <legend className="field-label">The line is</legend>
        <div className="field-ticks">
          {choices.kinds.map(({ value, text }) => (
            <label key={value} className="field-tick">
              <input
                type="radio"
                name="as"
                value={value}
                checked={as === value}
                onChange={() => setAs(value)}
              />
              <span>{text}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <div ref={box} className="minute-line">
        <TextBox
          name="text"
          label="Line"
          hint="Enter records it. Beginning with p:, n:, d: or a: makes it a point, a note, a decision or an action."
          autoComplete="off"
          onChange={readLetter}
          required
        />
        <SubmitButton>Record the line</SubmitButton>
      </div>
      {(as === 'action' || !hydrated) && <ActionBoxes {...choices} />}
    </>
  )
}

/** Who owes it and until when. Without scripts they stand there for every line, and count for an action only. */
function ActionBoxes({ items, owners, departments, questions, kinds }: MinuteChoices): ReactNode {
  if (!kinds.some(({ value }) => value === 'action')) return null
  return (
    <fieldset className="field field-fieldset">
      <legend className="field-label">Of an action</legend>
      <div className="form-row">
        <ChoiceBox name="owner" label="Owed by" choices={owners} />
        <TextBox name="dueOn" type="date" label="By" />
        <ChoiceBox name="kind" label="Asked for" choices={questions} />
        <ChoiceBox name="from" label="Answer accepted by" choices={departments} />
        <ChoiceBox
          name="item"
          label="Item"
          choices={[{ value: '', text: 'that of the point' }, ...items]}
          optional
        />
      </div>
    </fieldset>
  )
}

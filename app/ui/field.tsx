import {
  useId,
  type InputHTMLAttributes,
  type ReactNode,
  type SelectHTMLAttributes,
  type TextareaHTMLAttributes,
} from 'react'
import { Sign } from './sign'

type Common = {
  name: string
  label: ReactNode
  hint?: ReactNode
  /** What is wrong and what to do, in a sentence. */
  error?: ReactNode
  /** Said beside the label when the answer may be left out. */
  optional?: boolean
}

/** One choice of a list. */
export type Choice = { value: string; text: string; disabled?: boolean }

type Omitted = 'name' | 'id' | 'className' | 'aria-invalid' | 'aria-describedby'
type TextProps = Common & Omit<InputHTMLAttributes<HTMLInputElement>, Omitted>
type NumberProps = Omit<TextProps, 'type' | 'inputMode'> & {
  /** Printed behind the box. */
  unit?: string
}
type LinesProps = Common & Omit<TextareaHTMLAttributes<HTMLTextAreaElement>, Omitted>
type ChoiceProps = Common &
  Omit<SelectHTMLAttributes<HTMLSelectElement>, Omitted> & { choices: readonly Choice[] }

/** One line: text, password, e-mail, date or file, by `type`. What was typed stays when `defaultValue` hands it back. */
export function TextField({ name, label, hint, error, optional, ...input }: TextProps) {
  const wiring = useWiring(name, hint, error)
  return (
    <Labelled {...{ label, hint, error, optional, wiring }}>
      <input type="text" {...input} {...wiring.control} className="control" />
    </Labelled>
  )
}

/** A number as typed, with its unit behind it. It stays text, so that a slip can be shown back and explained. */
export function NumberField({ name, label, hint, error, optional, unit, ...input }: NumberProps) {
  const wiring = useWiring(name, hint, error)
  return (
    <Labelled
      label={
        unit ? (
          <>
            {label}
            <span className="sr-only"> in {unit}</span>
          </>
        ) : (
          label
        )
      }
      {...{ hint, error, optional, wiring }}
    >
      <div className="field-control">
        <input
          autoComplete="off"
          {...input}
          {...wiring.control}
          type="text"
          inputMode="decimal"
          className="control control-number"
        />
        {unit && (
          <span className="control-unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </div>
    </Labelled>
  )
}

/** Several lines of text. */
export function LinesField({ name, label, hint, error, optional, ...area }: LinesProps) {
  const wiring = useWiring(name, hint, error)
  return (
    <Labelled {...{ label, hint, error, optional, wiring }}>
      <textarea rows={4} {...area} {...wiring.control} className="control" />
    </Labelled>
  )
}

/** One of a list. */
export function ChoiceField({ name, label, hint, error, optional, choices, ...select }: ChoiceProps) {
  const wiring = useWiring(name, hint, error)
  return (
    <Labelled {...{ label, hint, error, optional, wiring }}>
      <select {...select} {...wiring.control} className="control">
        {choices.map(({ value, text, disabled }) => (
          <option key={value} value={value} disabled={disabled}>
            {text}
          </option>
        ))}
      </select>
    </Labelled>
  )
}

/** A yes or no. */
export function TickField({ name, label, hint, error, ...input }: Omit<TextProps, 'type' | 'optional'>) {
  const wiring = useWiring(name, hint, error)
  return (
    <div className="field">
      <label className="field-tick">
        <input {...input} {...wiring.control} type="checkbox" />
        <span>{label}</span>
      </label>
      <Hint id={wiring.hintId}>{hint}</Hint>
      <Fault id={wiring.errorId}>{error}</Fault>
    </div>
  )
}

type PickProps = Common & { choices: readonly Choice[]; defaultValue?: string; required?: boolean }

/** One of a few, all in sight. */
export function PickField({
  name,
  label,
  hint,
  error,
  optional,
  choices,
  defaultValue,
  required,
}: PickProps) {
  const { hintId, errorId, control } = useWiring(name, hint, error)
  return (
    <fieldset className="field field-fieldset" aria-describedby={control['aria-describedby']}>
      <legend className="field-label">
        {label}
        {optional && <span className="field-optional"> (optional)</span>}
      </legend>
      <Hint id={hintId}>{hint}</Hint>
      <div className="field-ticks">
        {choices.map(({ value, text, disabled }) => (
          <label key={value} className="field-tick">
            <input
              type="radio"
              name={name}
              value={value}
              defaultChecked={value === defaultValue}
              {...{ disabled, required }}
            />
            <span>{text}</span>
          </label>
        ))}
      </div>
      <Fault id={errorId}>{error}</Fault>
    </fieldset>
  )
}

type Wiring = ReturnType<typeof useWiring>

function useWiring(name: string, hint: ReactNode, error: ReactNode) {
  const id = useId()
  const hintId = `${id}-hint`
  const errorId = `${id}-error`
  const described = [hint && hintId, error && errorId].filter(Boolean).join(' ')
  return {
    hintId,
    errorId,
    control: {
      id,
      name,
      'aria-invalid': error ? true : undefined,
      'aria-describedby': described || undefined,
    },
  } as const
}

type LabelledProps = Omit<Common, 'name'> & { wiring: Wiring; children: ReactNode }

function Labelled({ label, hint, error, optional, wiring, children }: LabelledProps) {
  return (
    <div className="field">
      <label className="field-label" htmlFor={wiring.control.id}>
        {label}
        {optional && <span className="field-optional"> (optional)</span>}
      </label>
      {children}
      <Hint id={wiring.hintId}>{hint}</Hint>
      <Fault id={wiring.errorId}>{error}</Fault>
    </div>
  )
}

function Hint({ id, children }: { id: string; children: ReactNode }) {
  if (!children) return null
  return (
    <p id={id} className="field-hint">
      {children}
    </p>
  )
}

function Fault({ id, children }: { id: string; children: ReactNode }) {
  if (!children) return null
  return (
    <p id={id} className="field-error">
      <Sign kind="refusal" size={16} />
      <span>{children}</span>
    </p>
  )
}

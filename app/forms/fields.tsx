'use client'
import { usePathname } from 'next/navigation'
import type { ComponentProps } from 'react'
import { signInAddress } from '@/app/addresses'
import { useFormState } from '@/app/forms/command-form'
import { useWorks } from '@/app/forms/works'
import { ChoiceField, LinesField, NumberField, PickField, TextField, TickField } from '@/app/ui/field'
import { decimalText } from '@/shared/quantity/decimal-typed'

/*
 * The plain fields of app/ui, inside a CommandForm: after a refusal each shows
 * what was typed into it and what is wrong with it.
 */

/** The key makes the box take the value typed again: React keeps an uncontrolled box otherwise. */
function useField(name: string, given: string | number | readonly string[] | undefined) {
  const { fields, typed } = useFormState()
  const defaultValue = typed[name] ?? given
  return { error: fields[name], defaultValue, key: String(typed[name] ?? '') }
}

export function TextBox(props: ComponentProps<typeof TextField>) {
  const { key, ...field } = useField(props.name, props.defaultValue)
  return <TextField key={key} {...props} {...field} />
}
export function NumberBox(props: ComponentProps<typeof NumberField>) {
  const { notation } = useWorks()
  const given = props.defaultValue
  const { key, ...field } = useField(
    props.name,
    typeof given === 'number' ? decimalText(given, notation.decimal) : given,
  )
  return <NumberField key={key} {...props} {...field} />
}
export function LinesBox(props: ComponentProps<typeof LinesField>) {
  const { key, ...field } = useField(props.name, props.defaultValue)
  return <LinesField key={key} {...props} {...field} />
}
export function ChoiceBox(props: ComponentProps<typeof ChoiceField>) {
  const { key, ...field } = useField(props.name, props.defaultValue)
  return <ChoiceField key={key} {...props} {...field} />
}
export function PickBox(props: ComponentProps<typeof PickField>) {
  const { key, defaultValue, error } = useField(props.name, props.defaultValue)
  return (
    <PickField
      key={key}
      {...props}
      error={error}
      defaultValue={defaultValue === undefined ? undefined : String(defaultValue)}
    />
  )
}
export function TickBox(props: ComponentProps<typeof TickField>) {
  const { fields, typed, message } = useFormState()
  const wasSent = message !== undefined
  return (
    <TickField
      key={String(wasSent)}
      {...props}
      error={fields[props.name]}
      defaultChecked={wasSent ? props.name in typed : props.defaultChecked}
    />
  )
}

/** The password that makes a form a signature, with what signing it means. */
export function SignatureBox({ meaning, hasPassword }: { meaning: string; hasPassword: boolean }) {
  const { fields } = useFormState()
  const here = usePathname()
  if (!hasPassword)
    return (
      <p className="field-hint">
        {meaning} You sign with a sign-in at your identity provider not older than five minutes:{' '}
        <a href={signInAddress(here)}>sign in again</a> first if yours is older.
      </p>
    )
  return (
    <TextField
      name="password"
      type="password"
      autoComplete="current-password"
      label="Your password"
      hint={meaning}
      error={fields['password']}
      required
    />
  )
}

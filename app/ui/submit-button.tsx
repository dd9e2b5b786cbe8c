'use client'
import type { ReactNode } from 'react'
import { useFormStatus } from 'react-dom'
import { Button, type ButtonKind } from './button'

type SubmitButtonProps = {
  kind?: ButtonKind
  /** What it says while the form is under way. */
  pendingText?: string
  /** Sent with the form when this button is the one pressed. */
  name?: string
  value?: string
  /** What it is called where its text alone would not tell it from its like; begins with that text. */
  label?: string
  children: ReactNode
}

/** Sends the form around it, and waits for the answer. */
export function SubmitButton({ kind = 'primary', pendingText, label, children, ...rest }: SubmitButtonProps) {
  const { pending } = useFormStatus()
  return (
    <Button type="submit" kind={kind} pending={pending} aria-label={label} {...rest}>
      {pending ? (pendingText ?? children) : children}
    </Button>
  )
}

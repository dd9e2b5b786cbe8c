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
  children: ReactNode
}

/** Sends the form around it, and waits for the answer. */
export function SubmitButton({ kind = 'primary', pendingText, children, ...rest }: SubmitButtonProps) {
  const { pending } = useFormStatus()
  return (
    <Button type="submit" kind={kind} pending={pending} {...rest}>
      {pending ? (pendingText ?? children) : children}
    </Button>
  )
}

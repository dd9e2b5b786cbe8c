'use client'
import type { ReactNode } from 'react'
import { useFormState } from '@/app/forms/command-form'

interface AnsweredDisclosureProps {
  summary: ReactNode
  /** Open from the start: the page was asked for with this form in mind. */
  open?: boolean
  children: ReactNode
}

/** A form folded away until asked for; it stands open when the server answered it, scripts or not. */
export function AnsweredDisclosure({ summary, open = false, children }: AnsweredDisclosureProps) {
  const { message, preview, worksEffect } = useFormState()
  const answered = message !== undefined || preview !== undefined || worksEffect !== undefined
  return (
    <details className="disclosure" open={open || answered} suppressHydrationWarning>
      <summary>{summary}</summary>
      <div className="disclosure-body">{children}</div>
    </details>
  )
}

import type { ReactNode } from 'react'

type DisclosureProps = {
  summary: ReactNode
  open?: boolean
  /** Whether paper shows it, opened. Workings are; an editing form is not. */
  printed?: boolean
  children: ReactNode
}

/** Something folded away until asked for. A reader may open it before scripts load; that is no mismatch. */
export function Disclosure({ summary, open, printed = true, children }: DisclosureProps) {
  return (
    <details
      className={printed ? 'disclosure disclosure-printed' : 'disclosure'}
      open={open}
      suppressHydrationWarning
    >
      <summary>{summary}</summary>
      <div className="disclosure-body">{children}</div>
    </details>
  )
}

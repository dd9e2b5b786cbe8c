import { useId, type ReactNode } from 'react'

type SectionProps = {
  heading: ReactNode
  /** Heading level; 2 unless the section lies inside another. */
  level?: 2 | 3
  /** Address within the page, so that links can point here. */
  id?: string | undefined
  /** A line under the heading. */
  lead?: ReactNode
  /** Links or buttons at the heading's right. */
  aside?: ReactNode
  /** Folds away under its heading, and whether it starts so. Paper has it unfolded. */
  fold?: 'shut' | 'open'
  children: ReactNode
}

/** A part of the sheet under a ruled heading. */
export function Section({ heading, level = 2, id, lead, aside, fold, children }: SectionProps) {
  const headingId = useId()
  const Heading = `h${level}` as const
  const head = <Heading id={headingId}>{heading}</Heading>
  const body = (
    <>
      {lead && <p className="section-lead">{lead}</p>}
      <div className="part-body">{children}</div>
    </>
  )
  if (fold)
    return (
      <section aria-labelledby={headingId}>
        <details className="disclosure-printed section-fold" open={fold === 'open'} suppressHydrationWarning>
          <summary className="section-heading">{head}</summary>
          {/* Inside the fold, so that a link to the part opens it. */}
          <div id={id} className="section-folded">
            {aside && <p className="section-aside">{aside}</p>}
            {body}
          </div>
        </details>
      </section>
    )
  return (
    <section id={id} aria-labelledby={headingId}>
      <div className="section-heading">
        {head}
        {aside}
      </div>
      {body}
    </section>
  )
}

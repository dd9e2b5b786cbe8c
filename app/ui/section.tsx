import { useId, type ReactNode } from 'react'

type SectionProps = {
  heading: ReactNode
  /** Heading level; 2 unless the section lies inside another. */
  level?: 2 | 3
  /** Address within the page, so that links can point here. */
  id?: string
  /** A line under the heading. */
  lead?: ReactNode
  /** Links or buttons at the heading's right. */
  aside?: ReactNode
  children: ReactNode
}

/** A part of the sheet under a ruled heading. */
export function Section({ heading, level = 2, id, lead, aside, children }: SectionProps) {
  const headingId = useId()
  const Heading = `h${level}` as const
  return (
    <section id={id} aria-labelledby={headingId}>
      <div className="section-heading">
        <Heading id={headingId}>{heading}</Heading>
        {aside}
      </div>
      {lead && <p className="section-lead">{lead}</p>}
      <div className="part-body">{children}</div>
    </section>
  )
}

import { useId, type ReactNode } from 'react'

type PanelProps = {
  heading: ReactNode
  level?: 2 | 3 | 4
  id?: string
  /** A mark, link or button at the heading's right. */
  aside?: ReactNode
  children: ReactNode
}

/** A boxed part of the sheet: something complete in itself, such as a gate or a form. */
export function Panel({ heading, level = 3, id, aside, children }: PanelProps) {
  const headingId = useId()
  const Heading = `h${level}` as const
  return (
    <section id={id} className="panel" aria-labelledby={headingId}>
      <div className="panel-heading">
        <Heading id={headingId}>{heading}</Heading>
        {aside}
      </div>
      <div className="part-body">{children}</div>
    </section>
  )
}

import type { ReactNode } from 'react'

/** One captioned cell of a title block. */
export type TitleCell = { label: string; value: ReactNode; wide?: boolean }

type TitleBlockProps = {
  /** The page's `h1`. */
  title: string
  /** Supplementary title: one line under it. */
  supplement?: ReactNode
  /** Captioned cells in reading order; they share the width and fill their rows. */
  cells: readonly TitleCell[]
}

/** The title block of a drawing sheet (fields in the manner of ISO 7200); carries the page's heading. */
export function TitleBlock({ title, supplement, cells }: TitleBlockProps) {
  return (
    <div className="title-block">
      <div className="title-block-title">
        <h1>{title}</h1>
        {supplement && <p>{supplement}</p>}
      </div>
      <dl className="title-block-cells">
        {cells.map(({ label, value, wide }) => (
          <div key={label} className={wide ? 'title-cell title-cell-wide' : 'title-cell'}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </div>
  )
}

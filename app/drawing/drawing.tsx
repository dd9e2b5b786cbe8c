import { useId, type ReactNode } from 'react'
import { NumbersTable, type Numbers } from './numbers-table'

type DrawingProps = {
  /** What it shows; stands above it and names it. */
  title: string
  /** The picture in a sentence or two, for those who do not see it. */
  description: string
  width: number
  height: number
  /** The numbers drawn, as a table. */
  numbers: Numbers
  /** Whether the table stands in sight or folds away. Paper always has it. */
  numbersPlace?: 'beside' | 'folded'
  /** `wide` keeps its detail and scrolls in a narrow place; `narrow` is never blown up. */
  size?: 'wide' | 'normal' | 'narrow'
  /** A line under the picture. */
  note?: ReactNode
  /** The inside of the `svg`. */
  children: ReactNode
}

/** The figure around every drawing: caption, picture with its description, numbers. */
export function Drawing({ title, description, width, height, numbers, children, ...set }: DrawingProps) {
  const { numbersPlace = 'folded', size = 'normal', note } = set
  const id = useId()
  const picture = (
    <svg role="img" aria-labelledby={`${id}-title ${id}-says`} viewBox={`0 0 ${width} ${height}`}>
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-says`}>{description}</desc>
      {children}
    </svg>
  )
  return (
    <figure className={`drawing drawing-${size}`}>
      <figcaption id={`${id}-caption`}>{title}</figcaption>
      <div className={`drawing-body drawing-body-${numbersPlace}`}>
        <div>
          {size === 'wide' ? (
            <div className="drawing-scroll" role="region" aria-labelledby={`${id}-caption`} tabIndex={0}>
              {picture}
            </div>
          ) : (
            picture
          )}
          {note && <p className="drawing-note">{note}</p>}
        </div>
        <NumbersTable title={title} numbers={numbers} folded={numbersPlace === 'folded'} />
      </div>
    </figure>
  )
}

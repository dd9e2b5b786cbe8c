import { useId, type ReactNode } from 'react'
import { columnsShown, NumbersTable, type Numbers } from './numbers-table'

type DrawingProps = {
  /** What it shows; stands above it and names it. */
  title: string
  /** The picture in a sentence or two, for those who do not see it. */
  description: string
  width: number
  height: number
  /** The numbers drawn, as a table. */
  numbers: Numbers
  /** Whether the table stands in sight or folds away, as it does on paper. */
  numbersPlace?: 'beside' | 'below' | 'folded'
  /** `wide` keeps its detail and scrolls in a narrow place; `narrow` is never blown up. */
  size?: 'wide' | 'normal' | 'narrow'
  /** The same picture drawn upright, shown instead in a narrow place. */
  upright?: { width: number; height: number; picture: ReactNode }
  /** A line under the picture. */
  note?: ReactNode
  /** The inside of the `svg`. */
  children: ReactNode
}

/** Columns that stand whole beside a picture where an item has a card and a margin beside it. */
const MOST_BESIDE = 3

/** The figure around every drawing: caption, picture with its description, numbers. */
export function Drawing({ title, description, numbers, numbersPlace = 'folded', ...props }: DrawingProps) {
  const { width, height, size = 'normal', upright, note, children } = props
  const id = useId()
  const isMany = numbersPlace === 'beside' && columnsShown(numbers).length > MOST_BESIDE
  const picture = (
    <Picture {...{ title, description, width, height }} className="drawing-picture">
      {children}
    </Picture>
  )
  return (
    <figure className={`drawing drawing-${size}`}>
      <figcaption id={id}>{title}</figcaption>
      <div className={`drawing-body drawing-body-${numbersPlace}${isMany ? ' drawing-body-many' : ''}`}>
        <div className={upright && 'drawing-has-upright'}>
          {size === 'wide' ? (
            <div className="drawing-scroll" role="region" aria-labelledby={id} tabIndex={0}>
              {picture}
            </div>
          ) : (
            picture
          )}
          {upright && (
            <Picture
              {...{ title, description, width: upright.width, height: upright.height }}
              className="drawing-picture drawing-upright"
            >
              {upright.picture}
            </Picture>
          )}
          {note && <p className="drawing-note">{note}</p>}
        </div>
        <NumbersTable
          title={title}
          numbers={numbers}
          folded={numbersPlace === 'folded'}
          narrow={numbersPlace === 'below' ? 'cards' : 'scroll'}
        />
      </div>
    </figure>
  )
}

type PictureProps = Pick<DrawingProps, 'title' | 'description' | 'width' | 'height' | 'children'> & {
  className: string
}

function Picture({ title, description, width, height, className, children }: PictureProps) {
  const id = useId()
  return (
    <svg
      className={className}
      role="img"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-says`}
      viewBox={`0 0 ${width} ${height}`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-says`}>{description}</desc>
      {children}
    </svg>
  )
}

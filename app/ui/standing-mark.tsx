import type { ReactNode } from 'react'
import type { Standing } from '@/shared/gate/standing'
import { STANDING_INK, STANDING_SHAPE } from './standing-shape'

type StandingMarkProps = {
  standing: Standing
  /** How many stand so, for a summary. */
  count?: number
  /** What it is short of, or why it lapsed; follows the word. */
  because?: ReactNode
}

/** An item's standing as a land seen from above, with its word. */
export function StandingMark({ standing, count, because }: StandingMarkProps) {
  const word = <span className={`mark-word ${STANDING_INK[standing]}`}>{standing}</span>
  return (
    <span className="mark">
      <svg
        width="18"
        height="18"
        viewBox="-10 -10 20 20"
        aria-hidden="true"
        className={STANDING_INK[standing]}
        dangerouslySetInnerHTML={{ __html: STANDING_SHAPE[standing] }}
      />
      {count === undefined && !because ? (
        word
      ) : (
        <span>
          {count !== undefined && `${count} `}
          {word}
          {because && <> {because}</>}
        </span>
      )}
    </span>
  )
}

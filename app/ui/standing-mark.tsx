import type { ReactElement, ReactNode } from 'react'
import type { Standing } from '@/shared/gate/standing'
import { onceFor } from './once-for'
import { placed } from './placed-by-name'
import { landName, standingInk } from './standing-shape'

type StandingMarkProps = {
  standing: Standing
  /** How many stand so, for a summary. */
  count?: number
  /** What it is short of, or why it lapsed; follows the word. */
  because?: ReactNode
}

/** An item's standing as a land seen from above, with its word. */
export function StandingMark({ standing, count, because }: StandingMarkProps) {
  if (count === undefined && !because) return standingMark(standing)
  return (
    <span className="mark">
      <svg
        width="18"
        height="18"
        viewBox="-10 -10 20 20"
        aria-hidden="true"
        className={standingInk(standing)}
        dangerouslySetInnerHTML={{ __html: placed(landName(standing)) }}
      />
      <span>
        {count !== undefined && `${count} `}
        <span className={`mark-word ${standingInk(standing)}`}>{standing}</span>
        {because && <> {because}</>}
      </span>
    </span>
  )
}

/** The plain mark, for places with hundreds. */
export const standingMark = onceFor((standing: Standing): ReactElement => (
  <span
    className="mark"
    dangerouslySetInnerHTML={{
      __html:
        `<svg width="18" height="18" viewBox="-10 -10 20 20" aria-hidden="true" class="${standingInk(standing)}">` +
        `${placed(landName(standing))}</svg><span class="mark-word ${standingInk(standing)}">${standing}</span>`,
    }}
  />
))

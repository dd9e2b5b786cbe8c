import { verdictOn, type Margin, type Verdict } from '@/shared/rules/finding'
import { formatAgainst } from '@/shared/quantity/format'
import { hatchRectangle } from '@/app/drawing/hatch-rectangle'
import { VERDICT_INK } from './joint-drawing'
import { marginGeometry } from './margin-geometry'
import { marginText } from './margin-text'

/**
 * A found value drawn against its limit. The allowed side is always at the
 * left of the limit and what lies beyond is hatched; the text says both
 * numbers and the room between.
 */
export function MarginBar({ margin }: { margin: Margin }) {
  const verdict = verdictOn(margin)
  const { found, limit } = formatAgainst(margin.found, margin.limit, margin.unit)
  return (
    <span className="margin-bar">
      {verdict !== 'undetermined' && <Bar margin={margin} verdict={verdict} />}
      <span className="margin-text">
        <span>
          {found}, {margin.direction} {limit}
        </span>
        <span className={VERDICT_INK[verdict]}>{marginText(margin)}</span>
      </span>
    </span>
  )
}

const WIDTH = 200

function Bar({ margin, verdict }: { margin: Margin; verdict: Verdict }) {
  const { limit, found, guard, clipped } = marginGeometry(margin)
  const limitX = limit * WIDTH
  const foundX = Math.min(WIDTH - 5, Math.max(5, found * WIDTH))
  const guardX = guard * WIDTH
  return (
    <svg
      viewBox={`0 0 ${WIDTH} 18`}
      preserveAspectRatio="none"
      aria-hidden="true"
      className={VERDICT_INK[verdict]}
    >
      <path
        className="margin-beyond"
        d={hatchRectangle(limitX, 4, WIDTH - limitX, 10, 4)}
        strokeWidth="0.7"
      />
      <path className="margin-guard" d={`M${guardX} 4H${limitX}V14H${guardX}Z`} />
      <path className="margin-track" d={`M0 14H${WIDTH}`} strokeWidth="1" />
      <path
        className="margin-room"
        d={`M${Math.min(foundX, limitX)} 7H${Math.max(foundX, limitX)}V11H${Math.min(foundX, limitX)}Z`}
      />
      <path className="margin-limit" d={`M${limitX} 1V17`} strokeWidth="2" />
      <path
        className="margin-found"
        d={
          clipped
            ? found < 0.5
              ? `M${foundX - 5} 9L${foundX + 4} 4V14Z`
              : `M${foundX + 5} 9L${foundX - 4} 4V14Z`
            : `M${foundX} 3.5L${foundX + 4.5} 9L${foundX} 14.5L${foundX - 4.5} 9Z`
        }
        strokeWidth="0.8"
      />
    </svg>
  )
}

import type { Verdict } from '@/shared/rules/finding'
import { hatchRectangle } from '@/app/drawing/hatch-rectangle'

/** Ink of each verdict; the shape says it first. */
export const VERDICT_INK: Record<Verdict, string> = {
  meets: 'ink-mask',
  marginal: 'ink-rosin',
  fails: 'ink-carmine',
  undetermined: 'ink-tin',
}

/** Solder above the land: concave and climbing, straight, or balled over a land it does not wet. */
const SOLDER: Record<Exclude<Verdict, 'undetermined'>, string> = {
  meets: 'M7 22C14.5 21.2 19.2 16 20.4 4.5H27.6C28.8 16 33.5 21.2 41 22Z',
  marginal: 'M8 22L20.4 8.5H27.6L40 22Z',
  fails: 'M18.5 22C10.5 19.5 11.2 4.5 24 4.5S37.5 19.5 29.5 22Z',
}
/** Solder in the hole and its foot on the lower land. */
const FILL: Record<Exclude<Verdict, 'undetermined'>, string> = {
  meets: 'M18 22H30V35.5C32.5 35.8 34 36 35.5 36.4L27.6 39H20.4L12.5 36.4C14 36 15.5 35.8 18 35.5Z',
  marginal: 'M18 22H30V34H18Z',
  fails: 'M18 22H30V26C28.5 27.5 27.8 28 27.6 29H20.4C20.2 28 19.5 27.5 18 26Z',
}

/**
 * A plated hole with its lead, cut through: board hatched, lands and barrel in
 * copper, solder in the verdict's ink. Fine detail is left out when small.
 */
export function JointDrawing({ verdict, size }: { verdict: Verdict; size: number }) {
  const fine = size >= 40
  const line = fine ? 0.7 : 1.1
  return (
    <svg
      width={size * 1.2}
      height={size}
      viewBox="0 0 48 40"
      aria-hidden="true"
      className={VERDICT_INK[verdict]}
    >
      <path className="joint-laminate" d="M1 24H17V34H1ZM31 24H47V34H31Z" strokeWidth={line} />
      {fine && (
        <path
          className="joint-hatch"
          d={hatchRectangle(1, 24, 16, 10, 2.6) + hatchRectangle(31, 24, 16, 10, 2.6)}
          strokeWidth="0.4"
        />
      )}
      <path className="joint-copper" d="M7 22H18.4V35.8H9V34H16.6V24H7ZM41 22H29.6V35.8H39V34H31.4V24H41Z" />
      {verdict !== 'undetermined' && (
        <>
          <path
            className={fine ? 'joint-solder-fine' : 'joint-solder'}
            strokeWidth="1.1"
            d={`${SOLDER[verdict]}${FILL[verdict]}`}
          />
          {fine ? (
            <path className="joint-lead" d="M21 1.5H27V39.5H21Z" strokeWidth={line} />
          ) : (
            <path className="joint-lead-small" d="M24 0.5V39.5" />
          )}
        </>
      )}
      {(fine || verdict === 'undetermined') && (
        <path
          className="joint-axis"
          d="M24 0V40"
          strokeWidth={fine ? 0.4 : 1.6}
          strokeDasharray={fine ? '6 1.2 1 1.2' : '5 2 1.5 2'}
        />
      )}
    </svg>
  )
}

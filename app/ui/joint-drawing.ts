import { VERDICTS, type Verdict } from '@/shared/rules/finding'
import { hatchRectangle } from '@/app/drawing/hatch-rectangle'
import { placed, toPlace } from './placed-by-name'

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
 * copper, solder in the verdict's ink. The small one leaves fine detail out and
 * is placed by name, since a page shows hundreds (`MarksToPlace`). Text to be
 * placed as it is.
 */
export const jointMarkup = (verdict: Verdict, size: number): string =>
  `<svg width="${size * 1.2}" height="${size}" viewBox="0 0 48 40" aria-hidden="true" class="${VERDICT_INK[verdict]}">` +
  `${size >= 40 ? FINE[verdict] : placed(`joint-${verdict}`)}</svg>`

const LAMINATE = 'M1 24H17V34H1ZM31 24H47V34H31Z'
const COPPER =
  '<path class="joint-copper" d="M7 22H18.4V35.8H9V34H16.6V24H7ZM41 22H29.6V35.8H39V34H31.4V24H41Z"/>'
const HATCH = hatchRectangle(1, 24, 16, 10, 2.6) + hatchRectangle(31, 24, 16, 10, 2.6)

const FINE = perVerdict(
  (verdict) =>
    `<path class="joint-laminate" d="${LAMINATE}" stroke-width="0.7"/>` +
    `<path class="joint-hatch" d="${HATCH}" stroke-width="0.4"/>${COPPER}` +
    (verdict === 'undetermined'
      ? ''
      : `<path class="joint-solder-fine" stroke-width="1.1" d="${SOLDER[verdict]}${FILL[verdict]}"/>` +
        '<path class="joint-lead" d="M21 1.5H27V39.5H21Z" stroke-width="0.7"/>') +
    '<path class="joint-axis" d="M24 0V40" stroke-width="0.4" stroke-dasharray="6 1.2 1 1.2"/>',
)

const SMALL = perVerdict(
  (verdict) =>
    `<path class="joint-laminate" d="${LAMINATE}" stroke-width="1.1"/>${COPPER}` +
    (verdict === 'undetermined'
      ? '<path class="joint-axis" d="M24 0V40" stroke-width="1.6" stroke-dasharray="5 2 1.5 2"/>'
      : `<path class="joint-solder" d="${SOLDER[verdict]}${FILL[verdict]}"/>` +
        '<path class="joint-lead-small" d="M24 0.5V39.5"/>'),
)

/** The small joints, to be placed by name. */
export const jointsToPlace = (): string =>
  VERDICTS.map((verdict) => toPlace(`joint-${verdict}`, SMALL[verdict])).join('')

function perVerdict(draw: (verdict: Verdict) => string): Readonly<Record<Verdict, string>> {
  return {
    meets: draw('meets'),
    marginal: draw('marginal'),
    fails: draw('fails'),
    undetermined: draw('undetermined'),
  }
}

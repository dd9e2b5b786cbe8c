import { VERDICTS, type Verdict } from '@/shared/rules/finding'
import { hatchRectangle } from '@/app/drawing/hatch-rectangle'
import { placed, toPlace } from './placed-by-name'

/** Ink of each verdict; the shape says it first. */
export const VERDICT_INK: Record<Verdict, string> = {
  meets: 'ink-mask',
  marginal: 'ink-rosin',
  fails: 'ink-carmine',
  undetermined: 'ink-tin',
  'not applicable': 'ink-faint',
}

type Soldered = Exclude<Verdict, 'undetermined' | 'not applicable'>

/** Solder above the land: concave and climbing, straight, or balled over a land it does not wet. */
const SOLDER: Record<Soldered, string> = {
  meets: 'M7 22C14.5 21.2 19.2 16 20.4 4.5H27.6C28.8 16 33.5 21.2 41 22Z',
  marginal: 'M8 22L20.4 8.5H27.6L40 22Z',
  fails: 'M18.5 22C10.5 19.5 11.2 4.5 24 4.5S37.5 19.5 29.5 22Z',
}
/** Solder in the hole and its foot on the lower land. */
const FILL: Record<Soldered, string> = {
  meets: 'M18 22H30V35.5C32.5 35.8 34 36 35.5 36.4L27.6 39H20.4L12.5 36.4C14 36 15.5 35.8 18 35.5Z',
  marginal: 'M18 22H30V34H18Z',
  fails: 'M18 22H30V26C28.5 27.5 27.8 28 27.6 29H20.4C20.2 28 19.5 27.5 18 26Z',
}

/**
 * A plated hole with its lead, cut through: board hatched, lands and barrel in
 * copper, solder in the verdict's ink; where nothing applies, board without a
 * hole. The small one leaves fine detail out and is placed by name, since a
 * page shows hundreds (`MarksToPlace`). Text to be placed as it is.
 */
export const jointMarkup = (verdict: Verdict, size: number): string =>
  `<svg width="${size * 1.2}" height="${size}" viewBox="0 0 48 40" aria-hidden="true" class="${VERDICT_INK[verdict]}">` +
  `${size >= 40 ? FINE[verdict] : placed(nameOf(verdict))}</svg>`

const nameOf = (verdict: Verdict): string => `joint-${verdict.replace(' ', '-')}`

const DRILLED = 'M1 24H17V34H1ZM31 24H47V34H31Z'
const UNDRILLED = 'M1 24H47V34H1Z'
const COPPER =
  '<path class="joint-copper" d="M7 22H18.4V35.8H9V34H16.6V24H7ZM41 22H29.6V35.8H39V34H31.4V24H41Z"/>'
const HATCH = hatchRectangle(1, 24, 16, 10, 2.6) + hatchRectangle(31, 24, 16, 10, 2.6)

const laminate = (outline: string, strokeWidth: number): string =>
  `<path class="joint-laminate" d="${outline}" stroke-width="${strokeWidth}"/>`
const hatched = (hatch: string): string => `<path class="joint-hatch" d="${hatch}" stroke-width="0.4"/>`
const axis = (strokeWidth: number, dashes: string): string =>
  `<path class="joint-axis" d="M24 0V40" stroke-width="${strokeWidth}" stroke-dasharray="${dashes}"/>`

const FINE = perVerdict({
  undrilled: laminate(UNDRILLED, 0.7) + hatched(hatchRectangle(1, 24, 46, 10, 2.6)),
  bare: laminate(DRILLED, 0.7) + hatched(HATCH) + COPPER + axis(0.4, '6 1.2 1 1.2'),
  soldered: (verdict) =>
    laminate(DRILLED, 0.7) +
    hatched(HATCH) +
    COPPER +
    `<path class="joint-solder-fine" stroke-width="1.1" d="${SOLDER[verdict]}${FILL[verdict]}"/>` +
    '<path class="joint-lead" d="M21 1.5H27V39.5H21Z" stroke-width="0.7"/>' +
    axis(0.4, '6 1.2 1 1.2'),
})

const SMALL = perVerdict({
  undrilled: laminate(UNDRILLED, 1.1),
  bare: laminate(DRILLED, 1.1) + COPPER + axis(1.6, '5 2 1.5 2'),
  soldered: (verdict) =>
    laminate(DRILLED, 1.1) +
    COPPER +
    `<path class="joint-solder" d="${SOLDER[verdict]}${FILL[verdict]}"/>` +
    '<path class="joint-lead-small" d="M24 0.5V39.5"/>',
})

/** The small joints, to be placed by name. */
export const jointsToPlace = (): string =>
  VERDICTS.map((verdict) => toPlace(nameOf(verdict), SMALL[verdict])).join('')

function perVerdict(draw: {
  undrilled: string
  bare: string
  soldered: (verdict: Soldered) => string
}): Readonly<Record<Verdict, string>> {
  return {
    'not applicable': draw.undrilled,
    undetermined: draw.bare,
    meets: draw.soldered('meets'),
    marginal: draw.soldered('marginal'),
    fails: draw.soldered('fails'),
  }
}

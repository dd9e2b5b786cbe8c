import { digitsInThrees } from './digits-in-threes'
import { keptNumber } from './kept-number'
import { betterPrefix, type PrintedIn } from './prefixed'
import { roundingTolerance } from './rounding-tolerance'
import { printedUnit, type Unit } from './unit'

/**
 * A number to so many significant figures, with a real minus sign, digits in
 * threes and without trailing noise: 0.30000000004 → "0.3"; digits before the
 * point are always kept.
 */
export function formatNumber(value: number, significantFigures = 4): string {
  return (
    notFinite(value) ??
    (isPlain(value)
      ? atPlaces(value, placesFor(value, significantFigures))
      : scientific(value, significantFigures))
  )
}

/** A number with its unit, e.g. "0.25 mm", "3 %", "12"; under another prefix where that reads better, e.g. "100 MΩ". */
export const formatQuantity = (value: number, unit: Unit, significantFigures = 4): string =>
  isNoneExpected(value, unit)
    ? NONE_EXPECTED
    : printed(value, printedIn(value, unit), (number) => formatNumber(number, significantFigures))

/**
 * Found value and limit under one prefix. The found value has three figures, or as many decimals as its limit
 * where those are more: what lies far below its limit is not told to the last of its own digits. It has
 * more where rounding would hide on which side of the limit it lies (1.329 against 1.33 must not read
 * "1.33 against 1.33"), and a value on its limit reads as the limit does.
 */
export function formatAgainst(found: number, limit: number, unit: Unit): { found: string; limit: string } {
  const shownIn = printedIn(limit === 0 ? found : limit, unit)
  const said = (value: number, figures: number): string =>
    printed(value, shownIn, (number) => formatNumber(number, figures))
  if (found === limit || Math.abs(found - limit) <= roundingTolerance(found, limit)) {
    return { found: said(limit, 6), limit: said(limit, 6) }
  }
  if (isNoneExpected(found, unit)) return { found: NONE_EXPECTED, limit: said(limit, 6) }
  if (![found, limit].map((value) => value * shownIn.factor).every(isPlain)) return apart(found, limit, said)
  return {
    found: printed(found, shownIn, (number) => beside(number, limit * shownIn.factor)),
    limit: said(limit, 6),
  }
}

/**
 * An estimate with its bounds, all to the decimal place at which half the interval has two
 * significant figures. Source: JCGM 100:2008, 7.2.6. A bound without end is told as such.
 */
export function formatEstimate(
  { value, lower, upper }: { value: number; lower: number; upper: number },
  unit: Unit,
): { value: string; lower: string; upper: string } {
  const half = (upper - lower) / 2
  if (!(half > 0) || !Number.isFinite(half) || !isPlain(half)) {
    const said = (one: number): string => formatQuantity(one, unit, 3)
    return { value: said(value), lower: said(lower), upper: said(upper) }
  }
  const shownIn = printedIn(upper, unit)
  const said = (one: number): string =>
    printed(one, shownIn, (number) => toldFromZero(number, placesFor(half * shownIn.factor, 2)))
  return { value: said(value), lower: said(lower), upper: said(upper) }
}

/** "0.71 (0.62 to 0.8)" */
export function estimateInWords(
  value: number,
  bounds: { lower: number; upper: number },
  unit: Unit = '1',
): string {
  const said = formatEstimate({ value, ...bounds }, unit)
  return `${said.value} (${said.lower} to ${said.upper})`
}

const NONE_EXPECTED = 'none expected'
/** Of a million: tails beyond any real process are told as such, not to the last power of ten. */
const LEAST_EXPECTED = 1e-3

const isNoneExpected = (value: number, unit: Unit): boolean =>
  unit === 'per million' && value > 0 && value < LEAST_EXPECTED

const printedIn = (value: number, unit: Unit): PrintedIn =>
  betterPrefix(value, unit) ?? { unit: printedUnit(unit), factor: 1 }

function printed(value: number, { unit, factor }: PrintedIn, said: (number: number) => string): string {
  const number = said(factor === 1 ? value : keptNumber(value * factor))
  if (!unit) return number
  return unit === '°' ? `${number}°` : `${number} ${unit}`
}

/** The found number beside its limit: with the limit's decimals at least, and told from it and from zero. */
function beside(found: number, limit: number): string {
  const limitText = formatNumber(limit, 6)
  const scale = Math.max(Math.abs(found), Math.abs(limit))
  const first = Math.max(decimalsIn(limitText), placesFor(scale, 3))
  for (let places = first; places <= 20; places++) {
    const text = atPlaces(found, places)
    if (text !== limitText && (found === 0 || text !== '0')) return text
  }
  return String(found)
}

/** Numbers too great or too small for decimals, with as many figures as part them. */
function apart(found: number, limit: number, said: (value: number, figures: number) => string) {
  for (let figures = 3; figures <= 12; figures++) {
    const pair = { found: said(found, figures), limit: said(limit, Math.max(figures, 6)) }
    if (said(limit, figures) !== pair.found) return pair
  }
  return { found: String(found), limit: String(limit) }
}

function notFinite(value: number): string | undefined {
  if (Number.isNaN(value)) return 'not a number'
  return Number.isFinite(value) ? undefined : value > 0 ? '∞' : '−∞'
}

const isPlain = (value: number): boolean => value === 0 || (Math.abs(value) < 1e9 && Math.abs(value) >= 1e-5)

/** Decimal places at which a number has so many significant figures; none below the point. */
const placesFor = (value: number, figures: number): number =>
  value === 0 ? 0 : Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(value))))

/** A bound that is not zero does not read as zero. */
function toldFromZero(value: number, places: number): string {
  const text = atPlaces(value, places)
  return text === '0' ? formatNumber(value, 1) : text
}

const decimalsIn = (text: string): number => text.split('.')[1]?.length ?? 0

const atPlaces = (value: number, places: number): string =>
  digitsInThrees(minus(withoutTrailingZeros(value.toFixed(Math.min(places, 20)))))

function scientific(value: number, significantFigures: number): string {
  const [mantissa = '0', exponent = '0'] = value.toExponential(significantFigures - 1).split('e')
  return `${minus(String(Number(mantissa)))}×10${superscript(exponent.replace('+', ''))}`
}

/** "0.250" as "0.25", "3.00" as "3", "-0.0" as "0". */
function withoutTrailingZeros(text: string): string {
  if (!text.includes('.')) return text
  let end = text.length
  while (text[end - 1] === '0') end--
  if (text[end - 1] === '.') end--
  const short = text.slice(0, end)
  return short === '-0' ? '0' : short
}

const minus = (text: string): string => text.replace('-', '−')

const SUPERSCRIPTS: Record<string, string> = {
  '-': '⁻',
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
}
const superscript = (digits: string): string =>
  [...digits].map((digit) => SUPERSCRIPTS[digit] ?? digit).join('')

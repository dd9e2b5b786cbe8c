import { roundingTolerance } from './rounding-tolerance'
import { printedUnit, type Unit } from './unit'

/**
 * A number to so many significant figures, with a real minus sign and without
 * trailing noise: 0.30000000004 → "0.3"; 12345.6 to 3 → "12 300" is avoided,
 * digits before the point are always kept.
 */
export function formatNumber(value: number, significantFigures = 4): string {
  if (Number.isNaN(value)) return 'not a number'
  if (!Number.isFinite(value)) return value > 0 ? '∞' : '−∞'
  if (value === 0) return '0'
  const magnitude = Math.abs(value)
  if (magnitude >= 1e7 || magnitude < 1e-5) return scientific(value, significantFigures)
  const wholeDigits = Math.floor(Math.log10(magnitude)) + 1
  const decimals = Math.max(0, significantFigures - wholeDigits)
  return minus(withoutTrailingZeros(value.toFixed(Math.min(decimals, 20))))
}

/** A number with its unit, e.g. "0.25 mm", "3 %", "12". */
export function formatQuantity(value: number, unit: Unit, significantFigures = 4): string {
  const printed = printedUnit(unit)
  const number = formatNumber(value, significantFigures)
  if (!printed) return number
  return printed === '°' ? `${number}°` : `${number} ${printed}`
}

/**
 * Found value and limit printed with enough figures that rounding never hides
 * on which side of the limit the value lies (1.329 against 1.33 must not read
 * "1.33 against 1.33"), and a value on its limit reads as the limit does.
 */
export function formatAgainst(found: number, limit: number, unit: Unit): { found: string; limit: string } {
  if (found === limit || Math.abs(found - limit) <= roundingTolerance(found, limit)) {
    const both = formatQuantity(limit, unit, 6)
    return { found: both, limit: both }
  }
  for (let figures = 3; figures <= 12; figures++) {
    if (formatNumber(found, figures) === formatNumber(limit, figures)) continue
    return {
      found: formatQuantity(found, unit, figures),
      limit: formatQuantity(limit, unit, Math.max(figures, 6)),
    }
  }
  return { found: String(found), limit: String(limit) }
}

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

/** How the digits of a file's coordinates are read. */
export interface CoordinateFormat {
  readonly integerDigits: number
  readonly decimals: number
  /** Which zeros may be left out; where none may, either reading gives the same. */
  readonly omitted: 'leading' | 'trailing'
}

/** A number as it stands in the file, in the file's unit; undefined where it is none. */
export function coordinate(digits: string, format: CoordinateFormat): number | undefined {
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(digits)) return undefined
  if (digits.includes('.')) return Number(digits)
  if (format.omitted === 'leading') return Number(digits) / 10 ** format.decimals
  const sign = digits.startsWith('-') ? -1 : 1
  const bare = digits.replace(/^[+-]/, '').padEnd(format.integerDigits + format.decimals, '0')
  return (sign * Number(bare)) / 10 ** (bare.length - format.integerDigits)
}

export const MM_PER_INCH = 25.4

import { MM_PER_INCH } from '../coordinate-format'

export const LENGTH_UNITS = ['mm', 'inch', 'mil'] as const
/** A mil is a thousandth of an inch. */
export type LengthUnit = (typeof LENGTH_UNITS)[number]

export const MM_OF: Readonly<Record<LengthUnit, number>> = {
  mm: 1,
  inch: MM_PER_INCH,
  mil: MM_PER_INCH / 1000,
}

const WORDS: Readonly<Record<string, LengthUnit>> = {
  mm: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  metric: 'mm',
  in: 'inch',
  inch: 'inch',
  inches: 'inch',
  imperial: 'inch',
  mil: 'mil',
  mils: 'mil',
  thou: 'mil',
}

/** The unit that a word stands for; undefined where it is none. */
export const lengthUnitFrom = (word: string | undefined): LengthUnit | undefined =>
  word !== undefined && Object.hasOwn(WORDS, word.toLowerCase()) ? WORDS[word.toLowerCase()] : undefined

const STATED = /\bunits?\b[^A-Za-z]{0,20}(?:(?:used|of measure|are|is|in)[^A-Za-z]{1,20})?([A-Za-z]{2,12})/i

/** The unit stated in the lines before a table: "Unit = mm", "Units used: mils"; undefined where none is. */
export const unitStatedIn = (lines: readonly string[]): LengthUnit | undefined =>
  lines.map((line) => lengthUnitFrom(STATED.exec(line.slice(0, 200))?.[1])).find((unit) => unit !== undefined)

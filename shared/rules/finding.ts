import { roundingTolerance } from '@/shared/quantity/rounding-tolerance'
import type { Unit } from '@/shared/quantity/unit'
import type { Source } from '@/shared/sources/source'

/**
 * Worst last, so that the worst of several is the greatest index. `not applicable`:
 * the programme does not raise the matter, so there is nothing to meet or to fail.
 */
export const VERDICTS = ['not applicable', 'meets', 'marginal', 'undetermined', 'fails'] as const
export type Verdict = (typeof VERDICTS)[number]

/** Whether a finding or part with this verdict leaves a gate open. Nothing passes on nothing: see `not applicable`. */
export const PASSES: Readonly<Record<Verdict, boolean>> = {
  'not applicable': true,
  meets: true,
  marginal: true,
  undetermined: false,
  fails: false,
}

/** Whether something is left to mend, to measure or to watch, so that a remedy and the parts are worth showing at once. */
export const WANTS_REMEDY: Readonly<Record<Verdict, boolean>> = {
  'not applicable': false,
  meets: false,
  marginal: true,
  undetermined: true,
  fails: true,
}

/** Whether a concession can let it pass; an undetermined one only where what is missing is named. */
const CAN_BE_CONCEDED: Readonly<Record<Verdict, boolean>> = {
  'not applicable': false,
  meets: false,
  marginal: false,
  undetermined: true,
  fails: true,
}

/** What a rule found, with all a person needs to believe it or to mend it. */
export interface Finding {
  readonly rule: string
  readonly version: number
  readonly verdict: Verdict
  /** One sentence: what was found. */
  readonly found: string
  /** One sentence or phrase: what was asked. */
  readonly limit: string
  readonly margin?: Margin
  /** What was found beside the margin and the parts, so that the sentences hold nothing that is not data as well. */
  readonly measured?: Measured
  readonly working: readonly WorkingLine[]
  readonly sources: readonly Source[]
  /** What would make it meet; present whenever the rule can say. */
  readonly remedy?: Remedy
  /** What is missing, when undetermined. The machinery names it where a rule does not. */
  readonly missing?: readonly string[]
  /** Keys of the rule's reads that yield nothing, when undetermined: the same as data. */
  readonly lacking?: readonly string[]
  /** The finding for each hole, joint, lot or line, when there are several. */
  readonly parts?: readonly Part[]
  /** Assumptions and warnings that belong beside the verdict. */
  readonly notes?: readonly string[]
  readonly cautions?: readonly string[]
}

/** What a rule's `judge` returns; the machinery adds the rule's id and version, and what is lacking. */
export type Judged = Omit<Finding, 'rule' | 'version' | 'lacking'>

/** Whether a concession can let this finding pass: it fails, or names what is missing. */
export const canBeConceded = ({ verdict, missing = [] }: Pick<Finding, 'verdict' | 'missing'>): boolean =>
  CAN_BE_CONCEDED[verdict] && (verdict !== 'undetermined' || missing.length > 0)

/** The found value against its limit, for the margin bar. */
export interface Margin {
  readonly found: number
  readonly limit: number
  readonly unit: Unit
  readonly direction: 'at most' | 'at least'
  /** Inside the limit by less than this is marginal; in the limit's unit. */
  readonly guardBand: number
}

/** Named values of what was found: a number with its unit, a name, a day, a yes or no, or several names. */
export type Measured = Readonly<Record<string, FoundValue>>
export type FoundValue = Quantity | string | boolean | readonly string[]
export interface Quantity {
  readonly value: number
  readonly unit: Unit
}

/** One line of the working: the formula in words or symbols, the numbers in it, the result. */
export interface WorkingLine {
  readonly label: string
  readonly formula?: string
  readonly numbers?: string
  readonly result: string
}

/** One of several things judged by the same rule. */
export interface Part {
  /** What is judged, as people read it. */
  readonly subject: string
  /** The same as data, wherever the subject has words of the program in it. */
  readonly about?: About
  readonly verdict: Verdict
  readonly found: string
  readonly margin?: Margin
  readonly measured?: Measured
  readonly remedy?: Remedy
}

/** What a part is about: the lot, the log, the person, the choice… each by its name or key. */
export type About = Readonly<Record<string, string>>

/** What would make a finding meet: in words, and as a new value where one input, or one cell of a table, would do it. */
export interface Remedy {
  readonly message: string
  readonly parameter?: string
  readonly value?: number
  /** Where a cell would do it, `parameter` and `value` stay empty, so that nothing overwrites the table. */
  readonly cell?: RemedyCell
}

/** One cell of a table parameter, and what it would hold. */
export interface RemedyCell {
  readonly parameter: string
  /** Zero-based, in the order the table is held. */
  readonly row: number
  readonly column: string
  readonly value: number
}

/**
 * The worst of several verdicts; `undetermined` outranks `marginal`, `fails` outranks all.
 * Of no verdict at all it is `not applicable`: nothing meets on nothing.
 */
export const worstVerdict = (verdicts: readonly Verdict[]): Verdict =>
  verdicts.reduce<Verdict>(
    (worst, verdict) => (VERDICTS.indexOf(verdict) > VERDICTS.indexOf(worst) ? verdict : worst),
    'not applicable',
  )

/** What a value against a limit can come to. */
export type MarginVerdict = Extract<Verdict, 'meets' | 'marginal' | 'undetermined' | 'fails'>

/**
 * The verdict on a value against its limit. Outside is `fails`; inside by less
 * than the guard band is `marginal`; exactly on the limit, or off it by no more
 * than the rounding error of binary arithmetic, counts as inside.
 * A value that is not a number is `undetermined`, never a pass.
 */
export function verdictOn({ found, limit, direction, guardBand }: Margin): MarginVerdict {
  if (Number.isNaN(found) || Number.isNaN(limit)) return 'undetermined'
  const marginValue = direction === 'at most' ? limit - found : found - limit
  const tolerance = roundingTolerance(found, limit)
  if (!(marginValue >= -tolerance)) return 'fails'
  return marginValue < guardBand - tolerance ? 'marginal' : 'meets'
}

/** An undetermined outcome that says what is missing and where it would come from. */
export const undetermined = (
  found: string,
  missing: readonly string[],
  limit = 'Cannot be judged yet.',
): Judged => ({
  verdict: 'undetermined',
  found,
  limit,
  missing,
  working: [],
  sources: [],
})

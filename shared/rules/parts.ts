import {
  VERDICTS,
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
  type Verdict,
} from './finding'

/** How far inside its limit a value lies; negative outside. In the limit's unit. */
export const marginValueOf = ({ found, limit, direction }: Margin): number =>
  direction === 'at most' ? limit - found : found - limit

/** Room counted in guard bands, so that margins in different units can be compared. */
const relativeMargin = (margin: Margin): number =>
  marginValueOf(margin) / (margin.guardBand > 0 ? margin.guardBand : Math.abs(margin.limit) || 1)

/** The margin with the least room. A margin that is not a number counts as the least of all. */
export const tightest = (first: Margin, ...others: readonly Margin[]): Margin =>
  others.reduce((min, margin) => {
    const marginValue = relativeMargin(margin)
    return Number.isNaN(marginValue) || marginValue < relativeMargin(min) ? margin : min
  }, first)

/** A part judged on its margin alone. */
export const partOn = (part: Omit<Part, 'verdict' | 'margin'> & { margin: Margin }): Part => ({
  ...part,
  verdict: verdictOn(part.margin),
})

/**
 * One row judged; a row whose numbers contradict each other becomes
 * `undetermined` with the sentence that says why.
 */
export function partOrContradiction(subject: string, judgeRow: () => Part): Part {
  try {
    return judgeRow()
  } catch (error) {
    if (error instanceof RangeError) return { subject, verdict: 'undetermined', found: error.message }
    throw error
  }
}

/** The part that decides: worst verdict first, then least room. */
export const decidingPart = (parts: readonly Part[]): Part | undefined =>
  parts.reduce<Part | undefined>((worst, part) => (!worst || isWorse(part, worst) ? part : worst), undefined)

/** Whether a part is worse than another: by its verdict, then by the room it leaves. */
export function isWorse(part: Part, than: Part): boolean {
  if (part.verdict !== than.verdict) return VERDICTS.indexOf(part.verdict) > VERDICTS.indexOf(than.verdict)
  if (!part.margin || !than.margin) return part.margin !== undefined && than.margin === undefined
  return relativeMargin(part.margin) < relativeMargin(than.margin)
}

/**
 * A finding made of parts: the worst verdict, the deciding part's margin and
 * remedy, and a sentence that counts the parts outside.
 * `noun` names several parts: "holes", "spacings".
 */
export function judgedByParts({
  parts,
  noun,
  ...rest
}: Pick<Judged, 'limit' | 'working' | 'sources' | 'notes' | 'cautions'> & {
  parts: readonly Part[]
  noun: string
}): Judged {
  const deciding = decidingPart(parts)
  if (!deciding) throw new RangeError('A finding of parts needs at least one part.')
  const unclear = parts.filter((part) => part.verdict === 'undetermined')
  return {
    verdict: worstVerdict(parts.map((part) => part.verdict)),
    found: `${sentence(`${deciding.subject}: ${deciding.found}`)}${tally(parts, noun)}`,
    ...(deciding.margin && { margin: deciding.margin }),
    ...(deciding.remedy && { remedy: deciding.remedy }),
    ...(unclear.length > 0 && { missing: unclear.map((part) => `${part.subject}: ${part.found}`) }),
    parts,
    ...rest,
  }
}

const sentence = (text: string): string => (text.endsWith('.') ? text : `${text}.`)

function tally(parts: readonly Part[], noun: string): string {
  if (parts.length === 1) return ''
  const count = (verdict: Verdict): number => parts.filter((part) => part.verdict === verdict).length
  const said = VERDICTS.toReversed().flatMap((verdict) =>
    TALLIED[verdict] && count(verdict) > 0 ? `${count(verdict)} ${TALLIED[verdict]}` : [],
  )
  const outside = count('not applicable')
  if (said.length === 0 && outside > 0)
    return ` ${parts.length - outside} of ${parts.length} ${noun} pass; the others are not applicable.`
  if (said.length === 0) return ` All ${parts.length} ${noun} pass.`
  return ` Of ${parts.length} ${noun}, ${said.join(', ')}.`
}

/** How parts are counted that do not simply pass, the worst first. */
const TALLIED: Readonly<Record<Verdict, string | undefined>> = {
  fails: 'failing',
  undetermined: 'undetermined',
  marginal: 'marginal',
  meets: undefined,
  'not applicable': undefined,
}

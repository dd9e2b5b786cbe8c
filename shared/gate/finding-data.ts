import type { Finding, FoundValue, Margin, Measured, Part } from '@/shared/rules/finding'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

/** The form written now. The first was the digest of the finding's sentences. */
const FORM = 2

/**
 * What a finding found, as canonical JSON without a sentence: two findings with
 * the same text are the same finding, however they are worded. It names the rule
 * with its version, the verdict, the found value and its limit, whatever else
 * was measured, the parts that do not pass, and what an undetermined one lacks.
 */
export const findingData = ({
  rule,
  version,
  verdict,
  margin,
  measured,
  parts = [],
  lacking,
}: Pick<Finding, 'rule' | 'version' | 'verdict' | 'margin' | 'measured' | 'parts' | 'lacking'>): string =>
  canonicalJson({
    form: FORM,
    rule,
    version,
    verdict,
    ...numbersOf(margin, measured),
    parts: parts.filter(isInTheWay).map(partData),
    // Only of an undetermined finding, so that what was conceded of failing ones reads as it did.
    ...(lacking && { lacking: [...lacking] }),
  })

const isInTheWay = ({ verdict }: Part): boolean => verdict === 'fails' || verdict === 'undetermined'

/** What one part found, without a sentence. */
export const partData = ({ subject, about, verdict, margin, measured }: Part): JsonValue => ({
  about: about ? { ...about } : subject,
  verdict,
  ...numbersOf(margin, measured),
})

const numbersOf = (margin: Margin | undefined, measured: Measured | undefined) => ({
  margin: margin ? marginData(margin) : null,
  measured: measured
    ? Object.fromEntries(Object.entries(measured).map(([name, value]) => [name, valueData(value)]))
    : null,
})

/** The guard band is left out: it tells marginal from meets, which the verdict does. */
function marginData({ found, limit, unit, direction }: Margin): JsonValue {
  const scale = Math.max(...[found, limit].map(Math.abs).filter(Number.isFinite), 0)
  return { found: plainNumber(found, scale), limit: plainNumber(limit, scale), unit, direction }
}

function valueData(value: FoundValue): JsonValue {
  if (typeof value !== 'object') return value
  return 'unit' in value ? { value: plainNumber(value.value), unit: value.unit } : [...value]
}

/** As many as a figure is good for: what decides nothing (`binaryDust`) makes no other finding. */
const FIGURES = 9

/**
 * A number as it is told apart from others: nine figures of the greatest in
 * question, so that another order of adding up, which changes the last bits,
 * does not make another finding. Counts stay whole; what is not a number, or
 * without end, is written as a word.
 */
function plainNumber(value: number, scale = Math.abs(value)): number | string {
  if (!Number.isFinite(value)) return String(value)
  if (Number.isSafeInteger(value) || scale === 0) return value + 0
  const step = 10 ** (Math.floor(Math.log10(scale)) + 1 - FIGURES)
  const rounded = Number((Math.round(value / step) * step).toPrecision(FIGURES)) + 0
  // At the very end of what a number can hold the step itself is none.
  return Number.isFinite(rounded) ? rounded : value + 0
}

/** The same with every part, also those that pass. */
export const fullData = (finding: Finding): string =>
  canonicalJson([findingData(finding), (finding.parts ?? []).map(partData)])

/** Whether two findings say the same, whichever way they are worded. */
export const sameFinding = (one: Finding, other: Finding): boolean =>
  one === other || fullData(one) === fullData(other)

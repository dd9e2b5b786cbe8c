import { decimalTyped } from '@/shared/quantity/decimal-typed'
import type { DecimalSign } from '@/shared/quantity/notation'
import type { SamplingSettings } from '@/shared/sampling/sampling-plan'
import { INSPECTION_LEVELS } from '@/shared/statistics/sampling/code-letters'
import { SEVERITIES, type Severity } from '@/shared/statistics/sampling/single-plan'
import { VARIABLES_LIMITS } from '@/shared/statistics/sampling/variables-plan'

export const SCHEMES = ['single', 'double', 'zero-acceptance', 'variables'] as const
const LARGEST_LOT = 1_000_000

/** What a planner is asked, as it stands in the address. */
export interface PlanQuestion {
  readonly lotSize: number
  readonly severity: Severity
  readonly settings: SamplingSettings
}

export type AskedQuestion =
  | { readonly question: PlanQuestion; readonly problems?: undefined }
  | { readonly question?: undefined; readonly problems: Readonly<Record<string, string>> }

/**
 * Reads the planner's question from the address; what it leaves out is as the
 * programme specifies. What cannot be planned is told by field.
 */
export function questionFrom(
  given: Readonly<Record<string, string | undefined>>,
  specified: SamplingSettings,
  decimal: DecimalSign,
): AskedQuestion {
  const problems: Record<string, string> = {}
  const numberWithin = (name: string, otherwise: number, min: number, max: number, message: string) => {
    const typed = given[name]?.trim()
    const value = typed ? (decimalTyped(typed, decimal) ?? NaN) : otherwise
    if (!(value >= min && value <= max)) problems[name] = message
    return value
  }
  const lotSize = numberWithin('lot', 150, 1, LARGEST_LOT, 'A lot has 1 to 1 000 000 pieces.')
  if (!Number.isInteger(lotSize)) problems['lot'] ??= 'A lot is a whole number of pieces.'
  const share = numberWithin(
    'share',
    specified.zeroAcceptance.fraction * 100,
    0.01,
    99,
    'The share that must be found lies between 0.01 % and 99 %.',
  )
  const confidence = numberWithin(
    'confidence',
    specified.zeroAcceptance.confidence * 100,
    1,
    99.99,
    'The confidence lies between 1 % and 99.99 %.',
  )
  if (Object.keys(problems).length > 0) return { problems }
  return {
    question: {
      lotSize,
      severity: oneOf(SEVERITIES, given['state'], 'normal'),
      settings: {
        ...specified,
        scheme: oneOf(SCHEMES, given['type'], specified.scheme),
        level: oneOf(INSPECTION_LEVELS, given['level'], specified.level),
        limit: oneOf(VARIABLES_LIMITS, given['aql'], specified.limit),
        zeroAcceptance: { fraction: share / 100, confidence: confidence / 100 },
      },
    },
  }
}

const oneOf = <T extends string>(all: readonly T[], given: string | undefined, otherwise: T): T =>
  all.find((one) => one === given) ?? otherwise

/** Where a programme specifies nothing yet: what the tables call the usual level, and a common limit. */
export const USUAL_SETTINGS: SamplingSettings = {
  scheme: 'single',
  level: 'II',
  limit: '1.0',
  reducedWanted: false,
  zeroAcceptance: { fraction: 0.1, confidence: 0.9 },
}

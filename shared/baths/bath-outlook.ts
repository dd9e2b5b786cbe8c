import { trendConfidenceMin } from '@/shared/plan/limits/control-bath'
import { bathMass } from '@/shared/plan/parameters/control-bath'
import { exchangeMassKg } from '@/shared/physics/bath-exchange'
import type { Log } from '@/shared/records/log'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { optional } from '@/shared/rules/rule'
import { exchangeTargetPct } from './bath-exchange-words'
import { bathLimitReads, bathQuestions, chosenEdition, newCopperRead } from './bath-limits'
import type { BathQuestion } from './bath-questions'
import type { LogTrend } from '@/shared/logs/log-trend'
import { marginIn } from '@/shared/logs/logged-window'
import type { Verdict } from '@/shared/rules/finding'
import { trendOf } from './metal-trend'

/** Solder to take out and replace: a share of the bath, and its mass where the bath's is known. */
export interface Exchange {
  readonly sharePct: number
  readonly kg: number | undefined
  /** What the bath comes to. */
  readonly targetPct: number
}

/** One constituent of one bath: where it stands, where it goes, and what an exchange would take. */
export interface ConstituentOutlook {
  readonly question: BathQuestion
  readonly limitPct: number
  readonly newestPct: number | undefined
  readonly verdict: Verdict | undefined
  readonly trend: LogTrend | undefined
  /** From the newest share where it is above the target already, else from the limit; undefined where the solder added cannot bring it down. */
  readonly exchange: Exchange | undefined
  readonly exchangeFrom: 'now' | 'at the limit'
}

export interface BathOutlook {
  readonly edition: string
  readonly bathKg: number | undefined
  /** One-sided, in the trends' bounds, between 0 and 1. */
  readonly confidence: number
  /** The soonest to its limit first. */
  readonly constituents: readonly ConstituentOutlook[]
}

/** All constituents of a bath against their limits; undefined until the alloy family is specified, or while the edition is of another family. */
export function bathOutlook(log: Log, facts: Facts): BathOutlook | undefined {
  const inputs = inputsOf(
    { ...bathLimitReads, ...newCopperRead, massKg: optional(bathMass), trust: trendConfidenceMin },
    facts,
  )
  const chosen = inputs && chosenEdition(inputs)
  if (!inputs || (chosen && chosen.family !== inputs.family)) return undefined
  const confidence = inputs.trust.value / 100
  const constituents = bathQuestions(inputs, [log]).flatMap((question) =>
    outlookOf(question, inputs.massKg, confidence),
  )
  return {
    edition: chosen?.label ?? 'the strictest of all editions',
    bathKg: inputs.massKg,
    confidence,
    constituents: constituents.sort((one, other) => soonness(one) - soonness(other)),
  }
}

function outlookOf(
  question: BathQuestion,
  bathKg: number | undefined,
  confidence: number,
): ConstituentOutlook[] {
  const limitPct = question.window.max?.value
  if (limitPct === undefined) return []
  const { values } = question.series
  const newestPct = values[values.length - 1]
  const targetPct = exchangeTargetPct(question)
  const exchangeFrom = newestPct !== undefined && newestPct > targetPct ? 'now' : 'at the limit'
  const foundPct = exchangeFrom === 'now' ? newestPct! : limitPct
  const share =
    question.addedPct < targetPct
      ? exchangeMassKg({ bathKg: 1, foundPct, targetPct, addedPct: question.addedPct })
      : undefined
  return [
    {
      question,
      limitPct,
      newestPct,
      verdict: newestPct === undefined ? undefined : marginIn(question.window, newestPct).verdict,
      trend: trendOf(question, confidence)[0]?.trend,
      exchange:
        share === undefined
          ? undefined
          : { sharePct: share * 100, kg: bathKg === undefined ? undefined : share * bathKg, targetPct },
      exchangeFrom,
    },
  ]
}

/** Days to the limit by the prediction bound; of those that are not in sight, the fullest first. */
const soonness = ({ trend, newestPct = 0, limitPct }: ConstituentOutlook): number =>
  trend?.daysByPrediction ?? 1e6 * (2 - newestPct / limitPct)

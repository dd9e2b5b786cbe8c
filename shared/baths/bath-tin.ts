import { BATH_CONSTITUENTS } from '@/shared/materials/bath-constituents'
import { exchangeMassKg } from '@/shared/physics/bath-exchange'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { columnSeries } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import type { Part } from '@/shared/rules/finding'
import { guarded, marginIn, windowAround } from '@/shared/logs/logged-window'
import { measure } from '@/shared/rules/measure'
import { logSubject } from '@/shared/logs/judge-logged-window'

/** The newest tin content of a bath against its nominal; undefined for a bath without any analysis. */
export function tinPart(
  log: Log,
  alloy: keyof typeof BATH_CONSTITUENTS,
  tolerance: GoverningRequirement,
  guard: GoverningRequirement,
  bathKg: number | undefined,
): Part | undefined {
  const { values } = columnSeries(log, 'tinPct')
  const newest = values[values.length - 1]
  if (log.readings.count === 0) return undefined
  const { tinPct } = BATH_CONSTITUENTS[alloy]
  const named = logSubject(log, { key: 'tin', words: 'tin' })
  const measured = { nominal: measure(tinPct, '%'), tolerance: measure(tolerance.value, '%') }
  if (newest === undefined)
    return {
      ...named,
      measured,
      verdict: 'undetermined',
      found: `never analysed; the nominal is ${formatQuantity(tinPct, '%')} ± ${formatQuantity(tolerance.value, '%')}.`,
      remedy: { message: 'Ask the laboratory for it: an empty cell is not a zero.' },
    }
  const window = guarded(windowAround(tinPct, tolerance.value, '%', tolerance.document), guard)
  const low = newest < window.min!.value
  const { verdict, margin } = marginIn(window, newest)
  return {
    ...named,
    measured,
    verdict,
    found: `${formatQuantity(newest, '%')} against a nominal of ${formatQuantity(tinPct, '%')} ± ${formatQuantity(tolerance.value, '%')}.`,
    margin,
    remedy: low ? { message: tinInWords(newest, tinPct, bathKg) } : undefined,
  }
}

function tinInWords(foundPct: number, targetPct: number, bathKg: number | undefined): string {
  const kg = exchangeMassKg({ bathKg: bathKg ?? 100, foundPct, targetPct, addedPct: 100 })
  const amount = bathKg === undefined ? `${formatNumber(kg, 3)} % of the bath` : `${formatNumber(kg, 4)} kg`
  return `Exchange ${amount} for pure tin to come back to ${formatQuantity(targetPct, '%')}; let it melt in slowly and analyse again.`
}

import { BATH_CONSTITUENTS } from '@/shared/materials/bath-constituents'
import { exchangeMassKg } from '@/shared/physics/bath-exchange'
import type { Ruling } from '@/shared/plan/requirement'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { columnSeries } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import type { Part } from '@/shared/rules/finding'
import { windowAround } from '@/shared/logs/logged-window'
import { measure } from '@/shared/rules/measure'
import { logSubject } from '@/shared/logs/judge-logged-window'

/** The newest tin content of a bath against its nominal; undefined for a bath without any analysis. */
export function tinPart(
  log: Log,
  alloy: keyof typeof BATH_CONSTITUENTS,
  tolerance: Ruling,
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
      remedy: { says: 'Ask the laboratory for it: an empty cell is not a zero.' },
    }
  const window = windowAround(tinPct, tolerance.value, '%', tolerance.document)
  const low = newest < (window.least?.value ?? -Infinity)
  const outside = low || newest > (window.most?.value ?? Infinity)
  const guardBand = tolerance.value / 10
  const room = tolerance.value - Math.abs(newest - tinPct)
  return {
    ...named,
    measured,
    verdict: outside ? 'fails' : room < guardBand ? 'marginal' : 'meets',
    found: `${formatQuantity(newest, '%')} against a nominal of ${formatQuantity(tinPct, '%')} ± ${formatQuantity(tolerance.value, '%')}.`,
    margin: {
      found: newest,
      limit: low || newest < tinPct ? window.least!.value : window.most!.value,
      unit: '%',
      direction: newest < tinPct ? 'at least' : 'at most',
      guardBand,
    },
    remedy: low ? { says: tinInWords(newest, tinPct, bathKg) } : undefined,
  }
}

function tinInWords(foundPct: number, targetPct: number, bathKg: number | undefined): string {
  const kg = exchangeMassKg({ bathKg: bathKg ?? 100, foundPct, targetPct, addedPct: 100 })
  const amount = bathKg === undefined ? `${formatNumber(kg, 3)} % of the bath` : `${formatNumber(kg, 4)} kg`
  return `Exchange ${amount} for pure tin to come back to ${formatQuantity(targetPct, '%')}; let it melt in slowly and analyse again.`
}

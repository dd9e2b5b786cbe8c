import type { SolderFloat } from '@/shared/materials/laminates'

export interface Exposure {
  readonly temperatureC: number
  readonly seconds: number
  readonly times: number
}

/**
 * The share of a laminate's solder-float capability that exposures use up: each
 * exposure's time over the time the laminate floats at that temperature or the
 * next above, added up. Undefined when an exposure is hotter than any float known.
 * Throws RangeError on times or temperatures that are not positive.
 * Source: linear accumulation, an assumption; no published law.
 */
export function floatShareUsed(
  capability: readonly SolderFloat[],
  exposures: readonly Exposure[],
): number | undefined {
  let used = 0
  for (const { temperatureC, seconds, times } of exposures) {
    if (!(temperatureC > 0 && seconds > 0 && times >= 1)) {
      throw new RangeError('An exposure has a temperature, a time and a number of times above zero.')
    }
    const float = capability.find((each) => each.temperatureC >= temperatureC)
    if (!float) return undefined
    used += (seconds * times) / float.seconds
  }
  return used
}

/**
 * Expansion through the thickness from 20 °C to soldering, in per cent: below
 * the glass transition at one rate, above it at another.
 */
export function throughExpansionPct(
  expansion: { readonly below: number; readonly above: number },
  glassTransitionC: number,
  peakC: number,
): number {
  const below = Math.max(0, Math.min(peakC, glassTransitionC) - 20)
  const above = Math.max(0, peakC - glassTransitionC)
  return (expansion.below * below + expansion.above * above) * 1e-4
}

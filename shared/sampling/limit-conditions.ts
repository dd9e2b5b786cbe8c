import { solderFloat } from '@/shared/methods/solder-float'
import { rotaryDip } from '@/shared/methods/rotary-dip'
import { TEST_FLUXES, TEST_SOLDERS } from '@/shared/materials/test-solders'
import { WETTING_TIME_HOLDS_AT as HOLDS_AT } from '@/shared/plan/limits/evaluation-solderability'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { LotTest } from '@/shared/records/lot'

/** What a test must have been made under for its limit to say anything. */
export interface LimitConditions {
  readonly wettingTime: Pick<GoverningRequirement, 'kind' | 'value'>
  readonly temperatureToleranceK: number
  /** Not looked at by rules that look at solderability alone. */
  readonly float?: { readonly minC: number; readonly minS: number }
}

/**
 * Why a test was easier than its limit supposes, as a phrase; undefined when it was not. The default
 * wetting time is one of a bath, a solder and a flux; a time that the programme states is taken as
 * stated for its own conditions.
 */
export function easierThanItsLimit(test: LotTest, limits: LimitConditions): string | undefined {
  if (test.method === rotaryDip.key && limits.wettingTime.kind === 'default') return easierDip(test, limits)
  if (test.method === solderFloat.key && limits.float) return easierFloat(test, limits.float)
  return undefined
}

function easierDip(
  { conditions }: LotTest,
  { wettingTime, temperatureToleranceK }: LimitConditions,
): string | undefined {
  const { alloy, flux, bathTemperatureC } = conditions
  const hotter =
    typeof bathTemperatureC === 'number' &&
    bathTemperatureC > HOLDS_AT.bathTemperatureC + temperatureToleranceK
  const otherSolder = !HOLDS_AT.alloys.some((one) => one === alloy)
  const otherFlux = flux !== HOLDS_AT.flux
  if (!hotter && !otherSolder && !otherFlux) return undefined
  const asked = `${formatQuantity(HOLDS_AT.bathTemperatureC, '°C')} in ${HOLDS_AT.alloys.map((one) => TEST_SOLDERS[one].label).join(' or ')} with ${TEST_FLUXES[HOLDS_AT.flux].label.toLowerCase()}`
  return `the limit of ${formatQuantity(wettingTime.value, 's')} holds at ${asked}, and none is stated for these conditions`
}

function easierFloat(
  { conditions }: LotTest,
  { minC, minS }: NonNullable<LimitConditions['float']>,
): string | undefined {
  const { bathTemperatureC, floatS } = conditions
  if (typeof bathTemperatureC !== 'number' || typeof floatS !== 'number')
    return 'temperature or time of the float not stated'
  if (bathTemperatureC >= minC && floatS >= minS) return undefined
  return `floated at ${formatQuantity(bathTemperatureC, '°C')} for ${formatQuantity(floatS, 's')}, less than ${formatQuantity(minC, '°C')} for ${formatQuantity(minS, 's')}`
}

import { SHOWN_SHARE } from '@/shared/plan/limit-range'
import {
  BATH_LIMITS,
  CONTAMINANTS,
  type BathLimits,
  type Contaminant,
} from '@/shared/materials/bath-contaminants'
import { limit, type Limit } from '@/shared/plan/requirement'
import type { Source } from '@/shared/sources/source'

/** What a used solder bath may hold, by alloy family: the strictest value of the assembly editions. */

const editionsOf = (family: BathLimits['family']): readonly BathLimits[] =>
  Object.values<BathLimits>(BATH_LIMITS).filter(
    ({ family: own, forPreconditioning = false }) => own === family && !forPreconditioning,
  )

function contaminantLimit(family: BathLimits['family'], metal: Contaminant): Limit | undefined {
  const values = editionsOf(family).flatMap(({ max, source }) => {
    const value = max[metal]
    return value === undefined ? [] : [{ value, source }]
  })
  const strictest = values.reduce<{ value: number; source: Source } | undefined>(
    (min, next) => (min === undefined || next.value < min.value ? next : min),
    undefined,
  )
  if (!strictest) return undefined
  return limit({
    key: `bath-${family}-${metal}-most`,
    label: `${CONTAMINANTS[metal].label} in a ${family} bath`,
    unit: '%',
    direction: 'at most',
    byDefault: { value: strictest.value, authority: 'standard', from: strictest.source },
  })
}

const limitsOf = (family: BathLimits['family']): Readonly<Partial<Record<Contaminant, Limit>>> =>
  Object.fromEntries(
    (Object.keys(CONTAMINANTS) as Contaminant[]).flatMap((metal) => {
      const found = contaminantLimit(family, metal)
      return found ? [[metal, found]] : []
    }),
  )

export const tinLeadBathLimits = limitsOf('tin-lead')
export const leadFreeBathLimits = limitsOf('lead-free')

export const bathSumMax = limit({
  key: 'bath-tin-lead-sum-most',
  label: 'Copper, gold, cadmium, zinc and aluminium together in a tin-lead bath',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 0.4,
    authority: 'standard',
    from: {
      cite: 'J-STD-001C / MIL-STD-2000A, solder contamination limits, combined total',
      how: 'from memory',
    },
  },
})

export const bathTemperatureTolerance = limit({
  key: 'bath-temperature-tolerance-most',
  label: 'Bath temperature from its target, ±',
  unit: 'K',
  direction: 'at most',
  byDefault: {
    value: 5,
    authority: 'common practice',
    from: { cite: 'Bath held within 5 K of its setting', how: 'common practice, no published source' },
  },
})

export const tinLeadBathMin = limit({
  key: 'bath-temperature-tin-lead-least',
  label: 'Coolest tin-lead bath',
  unit: '°C',
  direction: 'at least',
  byDefault: {
    value: 240,
    authority: 'common practice',
    from: { cite: 'Tin-lead wave baths, 240 to 260 °C', how: 'common practice, no published source' },
  },
})

export const tinLeadBathMax = limit({
  key: 'bath-temperature-tin-lead-most',
  label: 'Hottest tin-lead bath',
  unit: '°C',
  direction: 'at most',
  byDefault: {
    value: 260,
    authority: 'common practice',
    from: { cite: 'Tin-lead wave baths, 240 to 260 °C', how: 'common practice, no published source' },
  },
})

export const leadFreeBathMin = limit({
  key: 'bath-temperature-lead-free-least',
  label: 'Coolest lead-free bath',
  unit: '°C',
  direction: 'at least',
  byDefault: {
    value: 255,
    authority: 'common practice',
    from: { cite: 'Lead-free wave baths, 255 to 270 °C', how: 'from memory' },
  },
})

export const leadFreeBathMax = limit({
  key: 'bath-temperature-lead-free-most',
  label: 'Hottest lead-free bath',
  unit: '°C',
  direction: 'at most',
  byDefault: {
    value: 270,
    authority: 'common practice',
    from: { cite: 'Lead-free wave baths, 255 to 270 °C', how: 'from memory' },
  },
})

export const bathAnalysisInterval = limit({
  key: 'bath-analysis-interval-most',
  label: 'Age of the newest bath analysis when boards are soldered',
  unit: 'days',
  direction: 'at most',
  byDefault: {
    value: 30,
    authority: 'common practice',
    from: {
      cite: 'Monthly bath analysis; J-STD-001 lets the shop’s history set the interval',
      how: 'common practice, no published source',
    },
  },
})

export const bathTinTolerance = limit({
  key: 'bath-tin-tolerance-most',
  label: 'Tin in a tin-lead bath from its nominal, ±',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 1.5,
    authority: 'standard',
    from: {
      cite: 'J-STD-001C / DOD-STD-2000A, solder contamination limits, printed by AIM Solder, “Solder analysis”: tin within 1.5 % of nominal',
      how: 'published',
    },
  },
})

export const trendConfidenceMin = limit({
  key: 'trend-confidence-least',
  label: 'Confidence in a bath’s trend staying below its limit',
  unit: '%',
  direction: 'at least',
  within: SHOWN_SHARE,
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: {
      cite: 'One-sided prediction bound of one further reading, at 95 %',
      how: 'common practice, no published source',
    },
  },
})

import { commonPractice, fromMemory, published } from '@/shared/sources/provenance'
import { limit, type Limit } from '@/shared/plan/requirement'
import type { Source } from '@/shared/sources/source'

/** The window a measured thermal profile of reflow must lie in. */

const profileLimit = (
  key: string,
  label: string,
  unit: Limit['unit'],
  direction: Limit['direction'],
  value: number,
  from: Source,
): Limit => limit({ key, label, unit, direction, byDefault: { value, authority: 'common practice', from } })

const TIN_LEAD = fromMemory(
  'Tin-lead reflow: 45 to 90 s above liquidus, peak 205 to 225 °C, rise of 3 K/s at most',
)
const LEAD_FREE = published(
  'Reflow of Sn96.5Ag3Cu0.5: CB3S module data sheet, page 25: soak from 150 to 200 °C for 60 to 120 s, 50 to 70 s above liquidus, peak 235 to 245 °C, rise of 3 K/s at most',
)

export const reflowPeakTinLeadMin = profileLimit(
  'reflow-peak-tin-lead-least',
  'Coolest peak of tin-lead reflow',
  '°C',
  'at least',
  205,
  TIN_LEAD,
)
export const reflowPeakTinLeadMax = profileLimit(
  'reflow-peak-tin-lead-most',
  'Hottest peak of tin-lead reflow',
  '°C',
  'at most',
  225,
  TIN_LEAD,
)
export const reflowPeakLeadFreeMin = profileLimit(
  'reflow-peak-lead-free-least',
  'Coolest peak of lead-free reflow',
  '°C',
  'at least',
  235,
  LEAD_FREE,
)
export const reflowPeakLeadFreeMax = profileLimit(
  'reflow-peak-lead-free-most',
  'Hottest peak of lead-free reflow',
  '°C',
  'at most',
  245,
  LEAD_FREE,
)
export const aboveLiquidusTinLeadMin = profileLimit(
  'above-liquidus-tin-lead-least',
  'Shortest time above liquidus, tin-lead',
  's',
  'at least',
  45,
  TIN_LEAD,
)
export const aboveLiquidusTinLeadMax = profileLimit(
  'above-liquidus-tin-lead-most',
  'Longest time above liquidus, tin-lead',
  's',
  'at most',
  90,
  TIN_LEAD,
)
export const aboveLiquidusLeadFreeMin = profileLimit(
  'above-liquidus-lead-free-least',
  'Shortest time above liquidus, lead-free',
  's',
  'at least',
  50,
  LEAD_FREE,
)
export const aboveLiquidusLeadFreeMax = profileLimit(
  'above-liquidus-lead-free-most',
  'Longest time above liquidus, lead-free',
  's',
  'at most',
  70,
  LEAD_FREE,
)
export const soakLeadFreeMin = profileLimit(
  'soak-lead-free-least',
  'Shortest soak from 150 to 200 °C, lead-free',
  's',
  'at least',
  60,
  LEAD_FREE,
)
export const soakLeadFreeMax = profileLimit(
  'soak-lead-free-most',
  'Longest soak from 150 to 200 °C, lead-free',
  's',
  'at most',
  120,
  LEAD_FREE,
)
export const profileRiseMax = profileLimit(
  'profile-rise-most',
  'Steepest rise of a profile',
  'K/s',
  'at most',
  3,
  LEAD_FREE,
)
export const profileSpreadMax = profileLimit(
  'profile-spread-most',
  'Difference across the board at the peak',
  'K',
  'at most',
  10,
  commonPractice('Peaks across a board within 10 K of each other'),
)
export const profileFallMax: Limit = limit({
  key: 'profile-fall-most',
  label: 'Steepest fall of a profile',
  unit: 'K/s',
  direction: 'at most',
  byDefault: {
    value: 6,
    authority: 'standard',
    from: fromMemory('IPC/JEDEC J-STD-020, classification reflow profile: cooling by 6 K/s at most'),
  },
})
export const thermocouplesMin = profileLimit(
  'thermocouples-least',
  'Thermocouples on the measured board',
  '1',
  'at least',
  3,
  commonPractice(
    'Three thermocouples at least: on the coolest joint, the hottest place and the part most at risk',
  ),
)

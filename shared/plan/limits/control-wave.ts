import { limit, type Limit } from '@/shared/plan/requirement'

/** What a board is put through on its way over the wave. */

const common = (
  key: string,
  label: string,
  unit: Limit['unit'],
  direction: Limit['direction'],
  value: number,
  cite: string,
  how: Limit['byDefault']['from']['how'] = 'common practice, no published source',
): Limit =>
  limit({
    key,
    label,
    unit,
    direction,
    byDefault: { value, authority: 'common practice', from: { cite, how } },
  })

const DWELL =
  'Dwell in the main wave 2 to 4 s; figures of 5 to 10 s in print count both waves or legacy alloys'
export const waveDwellMin = common(
  'wave-dwell-least',
  'Shortest dwell in the main wave',
  's',
  'at least',
  2,
  DWELL,
)
export const waveDwellMax = common(
  'wave-dwell-most',
  'Longest dwell in the main wave',
  's',
  'at most',
  4,
  DWELL,
)
export const waveDwellTotalMax = common(
  'wave-dwell-total-most',
  'Longest dwell in both waves together',
  's',
  'at most',
  10,
  'Components stand 260 °C for 10 s at most in wave soldering, as their makers publish it',
  'published',
)

const PREHEAT_TIN_LEAD =
  'Upper side 80 to 110 °C before a tin-lead wave (printed charts go to 120 °C); the flux data sheet governs'
export const preheatTinLeadMin = common(
  'preheat-tin-lead-least',
  'Coolest upper side entering a tin-lead wave',
  '°C',
  'at least',
  80,
  PREHEAT_TIN_LEAD,
  'from memory',
)
export const preheatTinLeadMax = common(
  'preheat-tin-lead-most',
  'Hottest upper side entering a tin-lead wave',
  '°C',
  'at most',
  110,
  PREHEAT_TIN_LEAD,
  'from memory',
)
const PREHEAT_LEAD_FREE =
  'Upper side 100 to 130 °C before a lead-free wave; water-soluble fluxes are run at 140 to 160 °C: the flux data sheet governs'
export const preheatLeadFreeMin = common(
  'preheat-lead-free-least',
  'Coolest upper side entering a lead-free wave',
  '°C',
  'at least',
  100,
  PREHEAT_LEAD_FREE,
  'from memory',
)
export const preheatLeadFreeMax = common(
  'preheat-lead-free-most',
  'Hottest upper side entering a lead-free wave',
  '°C',
  'at most',
  130,
  PREHEAT_LEAD_FREE,
  'from memory',
)
export const preheatRiseMax = common(
  'preheat-rise-most',
  'Steepest rise in preheat',
  'K/s',
  'at most',
  2,
  'Preheat rises by 2 to 4 K/s at most; the stricter is taken',
  'from memory',
)

export const thermalStepMax = common(
  'thermal-step-most',
  'Step from preheat into the wave',
  'K',
  'at most',
  150,
  'Ceramic parts stand a step of 150 K at most, as their makers publish it',
  'published',
)
export const thermalStepChipMax = common(
  'thermal-step-chip-most',
  'Step from preheat into the wave, with ceramic chip capacitors in it',
  'K',
  'at most',
  130,
  'Ceramic chip capacitors of size 1206 and under stand a step of 100 to 130 K, as their makers publish it',
  'published',
)

const IMMERSION = 'Board immersed by half to two thirds of its thickness'
export const immersionMin = common(
  'wave-immersion-least',
  'Shallowest immersion',
  '%',
  'at least',
  50,
  IMMERSION,
)
export const immersionMax = common(
  'wave-immersion-most',
  'Deepest immersion',
  '%',
  'at most',
  66.7,
  IMMERSION,
)
export const conveyorAngleMin = common(
  'conveyor-angle-least',
  'Flattest conveyor',
  '°',
  'at least',
  4,
  'Conveyor climbs by 4 to 7°',
  'from memory',
)
export const conveyorAngleMax = common(
  'conveyor-angle-most',
  'Steepest conveyor',
  '°',
  'at most',
  7,
  'Conveyor climbs by 4 to 7°',
  'from memory',
)

import type { Readings } from '@/shared/records/readings'

/** Why a specimen does not conform. Wetting faults are kept apart from merely falling short. */
export const SPECIMEN_FAULTS = ['non-wetting', 'dewetting', 'short of the limit', 'not readable'] as const
export type SpecimenFault = (typeof SPECIMEN_FAULTS)[number]

/** What a set of readings says of its specimens. The sample counts specimens, never places or leads. */
export interface SpecimenTally {
  /** Fault by specimen; a conforming specimen holds undefined. The gravest of several stays. */
  readonly faults: ReadonlyMap<string, SpecimenFault | undefined>
  /** Places, holes or terminations looked at. */
  readonly places: number
  /** The worst reading that could be measured, toward the limit. */
  readonly worst: number | undefined
  /** Measured values, one a specimen: its worst. Specimens with nothing to measure are left out. */
  readonly worstBySpecimen: ReadonlyMap<string, number>
}

/** How one method's rows are judged. */
interface RowJudge {
  /** The measured value of a row, undefined where it has none. */
  readonly value: (row: number) => number | undefined
  readonly fault: (row: number) => SpecimenFault | undefined
  readonly worseIs: 'greater' | 'smaller'
}

/** Rotary dip: a place is at fault when it did not wet, dewetted, or took longer than the limit. */
export function rotaryDipTally(readings: Readings, wettingTimeMaxS: number): SpecimenTally {
  const outcomes = readings.columns['outcome'] ?? []
  const times = readings.columns['wettingTimeS'] ?? []
  return tally(readings, {
    worseIs: 'greater',
    value: (row) => numberOrNone(times[row]),
    fault(row) {
      const wetting = wettingFault(outcomes[row])
      if (wetting) return wetting
      const time = times[row]
      if (typeof time !== 'number') return 'not readable'
      return time <= wettingTimeMaxS ? undefined : 'short of the limit'
    },
  })
}

/**
 * Dip and look: coverage is taken as stated or as what the faults leave of the
 * area, whichever is less; a short coverage is put down to its largest cause.
 */
export function dipAndLookTally(readings: Readings, coverageMinPct: number): SpecimenTally {
  const stated = readings.columns['coveragePct'] ?? []
  const nonWetting = readings.columns['nonWettingPct'] ?? []
  const dewetting = readings.columns['dewettingPct'] ?? []
  const pinholes = readings.columns['pinholesPct'] ?? []
  const coverage = (row: number): number | undefined => {
    const share = stated[row]
    if (typeof share !== 'number') return undefined
    const left = 100 - orZero(nonWetting[row]) - orZero(dewetting[row]) - orZero(pinholes[row])
    return Math.min(share, Number(left.toPrecision(12)))
  }
  return tally(readings, {
    worseIs: 'smaller',
    value: coverage,
    fault(row) {
      const covered = coverage(row)
      if (covered === undefined || Number.isNaN(covered)) return 'not readable'
      if (covered >= coverageMinPct) return undefined
      const never = orZero(nonWetting[row])
      const drewBack = orZero(dewetting[row])
      if (never === 0 && drewBack === 0) return 'short of the limit'
      return never >= drewBack ? 'non-wetting' : 'dewetting'
    },
  })
}

/** Rise in plated holes: a hole is at fault when it did not wet, dewetted, or filled too little. */
export function holeRiseTally(readings: Readings, riseMinPct: number): SpecimenTally {
  const outcomes = readings.columns['outcome'] ?? []
  const rises = readings.columns['risePct'] ?? []
  return tally(readings, {
    worseIs: 'smaller',
    value: (row) => numberOrNone(rises[row]),
    fault(row) {
      const wetting = wettingFault(outcomes[row])
      if (wetting) return wetting
      const rise = rises[row]
      if (typeof rise !== 'number') return 'not readable'
      return rise >= riseMinPct ? undefined : 'short of the limit'
    },
  })
}

/**
 * Receiving check: a piece counts once its part and revision were compared,
 * since every other comparison is with an order that names them; whatever is not
 * as ordered counts in any case.
 */
export function receivingTally(readings: Readings): SpecimenTally {
  const compared = readings.columns['checked'] ?? []
  const specimens = readings.columns['specimen'] ?? []
  const identified = new Set(specimens.filter((_, row) => compared[row] === 'identity').map(String))
  const whole = outcomeTally(readings, 'as ordered')
  const counted = [...whole.faults].filter(
    ([specimen, fault]) => fault !== undefined || identified.has(specimen),
  )
  return { ...whole, faults: new Map(counted) }
}

/** Solder float, and the outcomes of a receiving check: anything but the sound outcome is a fault. */
export function outcomeTally(readings: Readings, sound: string): SpecimenTally {
  const outcomes = readings.columns['outcome'] ?? []
  return tally(readings, {
    worseIs: 'greater',
    value: () => undefined,
    fault(row) {
      if (typeof outcomes[row] !== 'string') return 'not readable'
      return outcomes[row] === sound ? undefined : 'short of the limit'
    },
  })
}

/** Several tests of one lot as one: a specimen named in two of them is one specimen. */
export function joinTallies(tallies: readonly SpecimenTally[], worseIs: RowJudge['worseIs']): SpecimenTally {
  const only = tallies[0]
  if (only && tallies.length === 1) return only
  const faults = new Map<string, SpecimenFault | undefined>()
  const worstBySpecimen = new Map<string, number>()
  for (const one of tallies) {
    for (const [specimen, fault] of one.faults) faults.set(specimen, graver(faults.get(specimen), fault))
    for (const [specimen, value] of one.worstBySpecimen) {
      worstBySpecimen.set(specimen, worse(worstBySpecimen.get(specimen), value, worseIs))
    }
  }
  return {
    faults,
    worstBySpecimen,
    places: tallies.reduce((sum, one) => sum + one.places, 0),
    worst: worstOf(worstBySpecimen.values(), worseIs),
  }
}

/** How many specimens bear each fault. */
export function faultCounts({ faults }: SpecimenTally): ReadonlyMap<SpecimenFault, number> {
  const counts = new Map<SpecimenFault, number>()
  for (const fault of faults.values()) {
    if (fault !== undefined) counts.set(fault, (counts.get(fault) ?? 0) + 1)
  }
  return counts
}

/** Specimens that do not conform, an unreadable one among them: what cannot be read is no pass. */
export const nonconforming = (one: SpecimenTally): number =>
  [...faultCounts(one).values()].reduce((sum, count) => sum + count, 0)

function tally(readings: Readings, judge: RowJudge): SpecimenTally {
  const specimens = readings.columns['specimen'] ?? []
  const faults = new Map<string, SpecimenFault | undefined>()
  const worstBySpecimen = new Map<string, number>()
  for (let row = 0; row < readings.count; row++) {
    const specimen = String(specimens[row] ?? '')
    faults.set(specimen, graver(faults.get(specimen), judge.fault(row)))
    const value = judge.value(row)
    if (value === undefined) continue
    worstBySpecimen.set(specimen, worse(worstBySpecimen.get(specimen), value, judge.worseIs))
  }
  return {
    faults,
    worstBySpecimen,
    places: readings.count,
    worst: worstOf(worstBySpecimen.values(), judge.worseIs),
  }
}

const wettingFault = (outcome: unknown): SpecimenFault | undefined => {
  if (outcome === 'wetted') return undefined
  return outcome === 'non-wetting' || outcome === 'dewetting' ? outcome : 'not readable'
}

/** Non-wetting is the gravest, then dewetting, then too slow or too little. */
const graver = (a: SpecimenFault | undefined, b: SpecimenFault | undefined): SpecimenFault | undefined => {
  if (a === undefined) return b
  if (b === undefined) return a
  return SPECIMEN_FAULTS.indexOf(a) <= SPECIMEN_FAULTS.indexOf(b) ? a : b
}

const worse = (a: number | undefined, b: number, worseIs: RowJudge['worseIs']): number => {
  if (a === undefined) return b
  return worseIs === 'greater' ? Math.max(a, b) : Math.min(a, b)
}

function worstOf(values: Iterable<number>, worseIs: RowJudge['worseIs']): number | undefined {
  let worst: number | undefined
  for (const value of values) worst = worse(worst, value, worseIs)
  return worst
}

const numberOrNone = (cell: unknown): number | undefined => (typeof cell === 'number' ? cell : undefined)
const orZero = (cell: unknown): number => (typeof cell === 'number' ? cell : 0)

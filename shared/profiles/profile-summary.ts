import { summariseTrace, greatestDifference, type ThermalTrace, type TraceSummary } from './thermal-profile'
import { THERMOCOUPLES } from '@/shared/records/characteristics/thermal-profile'
import type { Log } from '@/shared/records/log'
import { memo } from '@/shared/memo'

/** The temperatures between which a profile soaks, and the time over which a slope counts. */
export const SOAK = { fromC: 150, toC: 200 } as const
export const SLOPE_WINDOW_S = 5

/** A measured pass: each thermocouple in the profile's terms, and the board as a whole. */
export interface ProfileSummary {
  readonly couples: readonly ({
    readonly column: string
    readonly name: string
    readonly trace: ThermalTrace
  } & TraceSummary)[]
  /** Hottest less coolest peak. */
  readonly peakSpreadK: number
  /** Greatest difference at one time, where all couples were read at the same instants. */
  readonly greatestDifference: { readonly differenceK: number; readonly atS: number } | undefined
}

/**
 * The summary of one pass; undefined while no thermocouple has two samples.
 * Empty cells are left out, couple by couple. `liquidusC` of the alloy in °C.
 */
export const profileSummary = memo((log: Log, liquidusC: number): ProfileSummary | undefined => {
  const traces = THERMOCOUPLES.flatMap((column, index) => {
    const trace = traceOf(log, column)
    return trace.timesS.length < 2 ? [] : [{ column, name: `Thermocouple ${index + 1}`, trace }]
  })
  const first = traces[0]
  if (!first) return undefined
  const couples = traces.map(({ column, name, trace }) => ({
    column,
    name,
    trace,
    ...summariseTrace(trace, {
      liquidusC,
      soakFromC: SOAK.fromC,
      soakToC: SOAK.toC,
      slopeWindowS: SLOPE_WINDOW_S,
    }),
  }))
  const peaks = couples.map(({ peakC }) => peakC)
  const together = traces.every(({ trace }) => trace.timesS.length === first.trace.timesS.length)
  return {
    couples,
    peakSpreadK: Math.max(...peaks) - Math.min(...peaks),
    greatestDifference: together ? greatestDifference(traces.map(({ trace }) => trace)) : undefined,
  }
})

/** One couple's samples, seconds from the first reading of the pass. */
function traceOf({ readings }: Log, column: string): { timesS: number[]; temperaturesC: number[] } {
  const at = readings.columns['at'] ?? []
  const cells = readings.columns[column] ?? []
  const start = at.find((instant): instant is number => typeof instant === 'number') ?? 0
  const timesS: number[] = []
  const temperaturesC: number[] = []
  for (let row = 0; row < readings.count; row++) {
    const instant = at[row]
    const cell = cells[row]
    if (typeof instant !== 'number' || typeof cell !== 'number') continue
    const timeS = (instant - start) / 1000
    // Two samples on one instant tell no slope: the first stands.
    if (timesS.length > 0 && !(timeS > timesS[timesS.length - 1]!)) continue
    timesS.push(timeS)
    temperaturesC.push(cell)
  }
  return { timesS, temperaturesC }
}

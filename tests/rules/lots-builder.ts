import type { ValueOf } from '@/shared/plan/parameter'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { acceptableQualityLevel, inspectionLevel } from '@/shared/plan/parameters/evaluation-sampling'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import type { Instrument } from '@/shared/records/instrument'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { Readings } from '@/shared/records/readings'
import { set, type SetValue } from './facts-builder'

/** A timer in calibration over the whole of the story's first half-year. */
export const timer: Instrument = {
  id: 'i-timer',
  tag: 'T-07',
  measures: 'time',
  calibratedOn: '2026-01-05',
  dueOn: '2026-07-05',
  certificate: 'C-1193',
  outOfUse: false,
}

/** A lot of 200 bare boards, received and not yet tested. */
export const lot = (over: Partial<Lot> = {}): Lot => ({
  id: over.code ?? 'B-01',
  code: 'B-01',
  kind: 'bare board',
  part: 'bare board LX-41',
  supplier: 'Northgate Circuits',
  dateCode: '2604',
  quantity: 200,
  receivedOn: '2026-02-02',
  storage: { temperatureC: 22, relativeHumidityPct: 45, packing: 'sealed, with desiccant' },
  supplierResult: 'Wetting time 1.6 s at 235 °C, 13 of 13',
  tests: [],
  disposition: null,
  usedIn: [],
  ...over,
})

export const accepted = {
  verdict: 'accept',
  by: 'R. Osei',
  on: '2026-02-10',
  reason: 'Sample good.',
} as const
export const rejected = { verdict: 'reject', by: 'R. Osei', on: '2026-02-10', reason: 'Slow.' } as const

export const boardConditions = {
  alloy: 'Sn60Pb40',
  flux: 'rosin-non-activated',
  bathTemperatureC: 235,
  ageing: 'none',
} as const

/** A test with its rows given one object a row. */
export const testOf = (
  method: string,
  rows: readonly Readonly<Record<string, number | string | null>>[],
  over: Partial<LotTest> = {},
): LotTest => ({
  id: `t-${method}`,
  method,
  testedOn: '2026-02-09',
  testedBy: 'M. Lind',
  instrumentId: timer.id,
  conditions: boardConditions,
  readings: readingsOf(rows),
  ...over,
})

export function readingsOf(rows: readonly Readonly<Record<string, number | string | null>>[]): Readings {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  return {
    count: rows.length,
    columns: Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name] ?? null)])),
  }
}

/** So many wetted specimens, each with one place that took so long. */
export const wetted = (times: readonly number[]) =>
  times.map((wettingTimeS, at) => ({
    specimen: `s${at + 1}`,
    place: 'track',
    outcome: 'wetted',
    wettingTimeS,
  }))

export const rotaryDip = (times: readonly number[], over: Partial<LotTest> = {}): LotTest =>
  testOf('rotary-dip', wetted(times), over)

/** The same value so many times. */
export const times = <T>(count: number, value: T): T[] => new Array<T>(count).fill(value)

type Needed = ValueOf<typeof lotsNeeded>[number]

/** A row of the parts to be evaluated. */
export const needed = (part: string, kind: Needed['kind'], method: Needed['method']): Needed =>
  ({ part, kind, method }) as Needed

/** A row of stated conditions: those of boards, stated for every lot, save for what is given. */
export const stated = (
  method: ValueOf<typeof testConditions>[number]['method'],
  over: Partial<ValueOf<typeof testConditions>[number]> = {},
): ValueOf<typeof testConditions>[number] => ({
  method,
  ...boardConditions,
  kind: undefined,
  part: undefined,
  ...over,
})

/** What a programme with one board to evaluate by rotary dip specifies: S-3, AQL 1.0. */
export const boardPlan: readonly SetValue[] = [
  set(lotsNeeded, [needed('bare board LX-41', 'bare board', 'rotary-dip')]),
  set(testConditions, [stated('rotary-dip')]),
  set(inspectionLevel, 'S-3'),
  set(acceptableQualityLevel, '1.0'),
]

/** A timer in calibration for as long as a test of storage runs. */
export const lastingTimer: Instrument = {
  ...timer,
  id: 'i-lasting-timer',
  tag: 'T-09',
  calibratedOn: '2025-01-05',
  dueOn: '2028-01-05',
}

/** A rotary dip of one day under the specified conditions: passed within 2 s, or of so many seconds. */
export const dippedOn = (testedOn: string, seconds = 1.2, over: Partial<LotTest> = {}): LotTest =>
  rotaryDip([seconds], { id: `t-${testedOn}`, testedOn, instrumentId: lastingTimer.id, ...over })

/** The conditions that `dippedOn` was made under, as a programme specifies them. */
export const dipSpecified = set(testConditions, [stated('rotary-dip')])

/** A lot of bare boards of a known part, received on New Year’s Day in a sound store and tested four days later. */
export const storedBoards = (code: string, over: Partial<Lot> = {}): Lot => ({
  id: `lot-${code}`,
  code,
  kind: 'bare board',
  part: 'bare board LX',
  supplier: 'Northgate',
  dateCode: 'not stated',
  quantity: 100,
  receivedOn: '2026-01-01',
  storage: { temperatureC: 22, relativeHumidityPct: 50, packing: 'sealed' },
  supplierResult: '',
  tests: [dippedOn('2026-01-05')],
  disposition: null,
  usedIn: [],
  ...over,
})

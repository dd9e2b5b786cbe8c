import fc from 'fast-check'
import { ALL_LIMITS, ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import type { Column } from '@/shared/columns/column'
import { LOT_KINDS } from '@/shared/methods/lot-kind'
import { AUTHORITIES, type Requirement } from '@/shared/plan/requirement'
import { CHARACTERISTICS } from '@/shared/records/characteristics'
import { DEFECT_KINDS, type Inspection } from '@/shared/records/inspection'
import type { Instrument } from '@/shared/records/instrument'
import type { Log } from '@/shared/records/log'
import { DISPOSITIONS, type Lot, type LotTest } from '@/shared/records/lot'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import type { Readings } from '@/shared/records/readings'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { sortedByTime } from '@/shared/records/time-order'
import { MS_PER_DAY, instantOf } from '@/shared/quantity/calendar'
import type { Facts } from '@/shared/rules/facts'
import { anyRow, anyValue, DAYS, NAMES } from './any-value'

/** The day on which the laws judge. */
export const TODAY = '2026-03-02'

const anyName = fc.constantFrom(...NAMES)
const anyDay = fc.constantFrom(...DAYS)
const pastDay = fc.constantFrom(...DAYS.filter((day) => day <= TODAY))
const INSTRUMENT_IDS = ['gauge', 'balance', 'thermometer'] as const
/** Some name an instrument that is not on file. */
const anyInstrumentId = fc.option(fc.constantFrom(...INSTRUMENT_IDS, 'elsewhere'), { nil: null })

const anyReadings = (columns: Readonly<Record<string, Column>>, maxLength: number): fc.Arbitrary<Readings> =>
  fc
    .array(anyRow(columns), { minLength: 1, maxLength })
    .map((rows) => readingsFromRows(rows as Parameters<typeof readingsFromRows>[0]))

const anyTest = (method: TestMethod, receivedOn: string): fc.Arbitrary<LotTest> =>
  fc.record({
    id: fc.uuid(),
    method: fc.constant(method.key),
    testedOn: fc.constantFrom(...DAYS.filter((day) => receivedOn <= day && day <= TODAY)),
    testedBy: anyName,
    instrumentId: anyInstrumentId,
    conditions: anyRow(method.conditions) as fc.Arbitrary<LotTest['conditions']>,
    readings: anyReadings(method.columns, 12),
  })

const anyLot: fc.Arbitrary<Lot> = fc
  .tuple(fc.constantFrom(...LOT_KINDS), pastDay)
  .chain(([kind, receivedOn]) => {
    const methods = Object.values<TestMethod>(TEST_METHODS).filter(({ lotKinds }) => lotKinds.includes(kind))
    return fc.record({
      id: fc.uuid(),
      code: anyName,
      kind: fc.constant(kind),
      part: anyName,
      supplier: anyName,
      dateCode: fc.oneof(anyName, fc.constant('')),
      quantity: fc.oneof(fc.integer({ min: 1, max: 1000 }), fc.constantFrom(1, 100_000_000)),
      receivedOn: fc.constant(receivedOn),
      storage: fc.record({
        temperatureC: fc.double({ min: -60, max: 150, noNaN: true }),
        relativeHumidityPct: fc.double({ min: 0, max: 100, noNaN: true }),
        packing: anyName,
      }),
      supplierResult: fc.oneof(anyName, fc.constant('')),
      tests: fc.array(
        fc.constantFrom(...methods).chain((method) => anyTest(method, receivedOn)),
        { maxLength: methods.length === 0 ? 0 : 3 },
      ),
      disposition: fc.option(
        fc.record({
          verdict: fc.constantFrom(...DISPOSITIONS),
          by: anyName,
          on: pastDay,
          reason: anyName,
        }),
        { nil: null },
      ),
      usedIn: fc.uniqueArray(anyName, { maxLength: 3 }),
    })
  })

/** From 1970, when instants begin, to the day after, which clocks of machines may be in. */
const anyInstant = fc.oneof(
  fc.integer({ min: instantOf('2025-12-01'), max: instantOf(TODAY) + MS_PER_DAY }),
  fc.constantFrom(0, instantOf(TODAY)),
)

function anyLogs(): fc.Arbitrary<ReadonlyMap<string, readonly Log[]>> {
  const entries = Object.values(CHARACTERISTICS).map(({ key, columns }) =>
    fc
      .array(
        fc.record({
          id: fc.uuid(),
          code: fc.uuid(),
          characteristic: fc.constant<string>(key),
          line: anyName,
          machine: anyName,
          instrumentId: anyInstrumentId,
          readings: fc
            .array(fc.tuple(anyInstant, anyRow(columns)), { maxLength: 14 })
            .map((rows) =>
              sortedByTime(readingsFromRows(rows.map(([at, row]) => ({ at, ...(row as object) })))),
            ),
        }),
        { maxLength: 2 },
      )
      .map((logs) => [key as string, logs] as const),
  )
  return fc.tuple(...entries).map((all) => new Map(all.filter(([, logs]) => logs.length > 0)))
}

const anyInspection: fc.Arbitrary<Inspection> = fc
  .record({
    id: fc.uuid(),
    assembly: anyName,
    inspectedOn: pastDay,
    inspector: anyName,
    magnification: fc.double({ min: 1, max: 100, noNaN: true }),
    jointsSeen: fc.oneof(fc.integer({ min: 1, max: 400 }), fc.constantFrom(1, 100_000)),
    defects: fc.array(
      fc.record(
        {
          kind: fc.constantFrom(...DEFECT_KINDS),
          joint: anyName,
          xMm: fc.double({ min: 0, max: 2000, noNaN: true }),
          yMm: fc.double({ min: 0, max: 2000, noNaN: true }),
        },
        { requiredKeys: ['kind', 'joint'] },
      ),
      { maxLength: 5 },
    ),
    note: fc.constant(''),
  })
  .map((inspection) => ({
    ...inspection,
    jointsSeen: Math.max(inspection.jointsSeen, new Set(inspection.defects.map(({ joint }) => joint)).size),
  }))

const anyInstruments: fc.Arbitrary<readonly Instrument[]> = fc.subarray([...INSTRUMENT_IDS]).chain((ids) =>
  fc.tuple(
    ...ids.map((id, index) =>
      fc
        .record({
          id: fc.constant<string>(id),
          tag: fc.constant<string>(NAMES[index] ?? id),
          measures: anyName,
          calibratedOn: pastDay,
          dueOn: anyDay,
          certificate: anyName,
          outOfUse: fc.boolean(),
        })
        .map((one) => (one.dueOn > one.calibratedOn ? one : { ...one, dueOn: '9999-12-31' })),
    ),
  ),
)

/** Of each kind none, or up to six. */
const anyByKind: fc.Arbitrary<ProgrammeRecords['byKind']> = fc
  .tuple(
    ...Object.entries(RECORD_KINDS).map(([kind, { columns }]) =>
      fc
        .array(fc.tuple(fc.uuid(), anyRow(columns)), { maxLength: 6 })
        .map((rows) => [kind, rows.map(([id, row]) => ({ ...row, id }))] as const),
    ),
  )
  .map((kinds) => new Map(kinds.filter(([, rows]) => rows.length > 0)))

/** Anything that can be recorded of a programme beside its specification. */
export const anyRecords: fc.Arbitrary<ProgrammeRecords> = fc.record({
  lots: fc.uniqueArray(anyLot, { maxLength: 5, selector: ({ code }) => code }),
  logs: anyLogs(),
  inspections: fc.array(anyInspection, { maxLength: 5 }),
  instruments: anyInstruments,
  byKind: anyByKind,
})

/** A limit as a document may state it: near the default, or any number at all. */
const anyRequirement: fc.Arbitrary<Requirement> = fc.constantFrom(...ALL_LIMITS).chain(({ key, byDefault }) =>
  fc.record({
    id: fc.uuid(),
    limit: fc.constant(key),
    authority: fc.constantFrom(...AUTHORITIES),
    document: anyName,
    clause: fc.constant(''),
    value: fc.oneof(
      fc.double({ min: 0.2, max: 5, noNaN: true }).map((share) => share * byDefault.value),
      fc.double({ noNaN: true, noDefaultInfinity: true }).map((number) => number + 0),
      fc.constantFrom(0, 1, -1),
    ),
    relaxes: fc.boolean(),
    reason: fc.constant('For the law.'),
    lesson: fc.constant(null),
  }),
)

const anyValues: fc.Arbitrary<Facts['values']> = fc
  .tuple(
    ...ALL_PARAMETERS.map((parameter) =>
      fc
        .option(anyValue(parameter), { nil: undefined, freq: 12 })
        .map((value) => [parameter.key, value] as const),
    ),
  )
  .map((values) => new Map(values.filter(([, value]) => value !== undefined)))

/** Any facts of a programme that the door lets in. */
export const anyFacts: fc.Arbitrary<Facts> = fc.record({
  values: anyValues,
  requirements: fc.array(anyRequirement, { maxLength: 6 }),
  records: anyRecords,
  today: fc.constant(TODAY),
})

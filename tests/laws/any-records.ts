import fc from 'fast-check'
import type { Column } from '@/shared/columns/column'
import { LOT_KINDS } from '@/shared/methods/lot-kind'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { instantOf, MS_PER_DAY } from '@/shared/quantity/calendar'
import type { Characteristic } from '@/shared/records/characteristic'
import { CHARACTERISTICS } from '@/shared/records/characteristics'
import { DEFECT_KINDS, type Inspection } from '@/shared/records/inspection'
import type { Instrument } from '@/shared/records/instrument'
import type { Log } from '@/shared/records/log'
import { DISPOSITIONS, type Lot, type LotTest } from '@/shared/records/lot'
import { PART_COLUMNS, type PartValues } from '@/shared/works/part-columns'
import type { ListedPart } from '@/shared/works/listed-part'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import type { Readings } from '@/shared/records/readings'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { sortedByTime } from '@/shared/records/time-order'
import { anyNumber, anyRow, DAYS, NAMES } from './any-value'

/** The day on which the laws judge. */
export const TODAY = '2026-03-02'

export const anyName = fc.constantFrom(...NAMES)
export const anyDay = fc.constantFrom(...DAYS)
export const pastDay = fc.constantFrom(...DAYS.filter((day) => day <= TODAY))
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

const anyDisposition = fc.record({
  verdict: fc.constantFrom(...DISPOSITIONS),
  by: anyName,
  on: pastDay,
  reason: anyName,
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
        temperatureC: anyNumber(-60, 150),
        relativeHumidityPct: anyNumber(0, 100),
        packing: anyName,
      }),
      supplierResult: fc.oneof(anyName, fc.constant('')),
      tests: fc.array(
        fc.constantFrom(...methods).chain((method) => anyTest(method, receivedOn)),
        { maxLength: methods.length === 0 ? 0 : 3 },
      ),
      disposition: fc.option(anyDisposition, { nil: null }),
      usedIn: fc.uniqueArray(anyName, { maxLength: 3 }),
    })
  })

/** From 1970, when instants begin, to the day after, which clocks of machines may be in. */
const anyInstant = fc.oneof(
  fc.integer({ min: instantOf('2025-12-01'), max: instantOf(TODAY) + MS_PER_DAY }),
  fc.constantFrom(0, instantOf(TODAY)),
)

/** A row whose shares of one whole come to no more than it. */
function ofOneWhole(row: Readonly<Record<string, unknown>>, shares: readonly string[]) {
  const held = shares.filter((share) => typeof row[share] === 'number')
  const together = held.reduce((sum, share) => sum + Number(row[share]), 0)
  const part = together > 100 ? 100 / together : 1
  return { ...row, ...Object.fromEntries(held.map((share) => [share, Number(row[share]) * part])) }
}

const anyLogs: fc.Arbitrary<ReadonlyMap<string, readonly Log[]>> = fc
  .tuple(
    ...Object.values<Characteristic>(CHARACTERISTICS).map(({ key, columns, sharesOfWhole = [] }) =>
      fc
        .array(
          fc.record({
            id: fc.uuid(),
            code: fc.uuid(),
            characteristic: fc.constant(key),
            line: anyName,
            machine: anyName,
            instrumentId: anyInstrumentId,
            readings: fc
              .array(fc.tuple(anyInstant, anyRow(columns)), { maxLength: 14 })
              .map((rows) =>
                sortedByTime(
                  readingsFromRows(
                    rows.map(([at, row]) => ({ at, ...ofOneWhole(row, sharesOfWhole) }) as never),
                  ),
                ),
              ),
          }),
          { maxLength: 2 },
        )
        .map((logs) => [key, logs] as const),
    ),
  )
  .map((all) => new Map(all.filter(([, logs]) => logs.length > 0)))

const anyInspection: fc.Arbitrary<Inspection> = fc
  .record({
    id: fc.uuid(),
    assembly: anyName,
    inspectedOn: pastDay,
    inspector: anyName,
    magnification: anyNumber(1, 100),
    jointsSeen: fc.oneof(fc.integer({ min: 1, max: 400 }), fc.constantFrom(1, 100_000)),
    defects: fc.array(
      fc.record(
        {
          kind: fc.constantFrom(...DEFECT_KINDS),
          joint: anyName,
          xMm: anyNumber(0, 2000),
          yMm: anyNumber(0, 2000),
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

const anyInstrument = (id: string, tag: string): fc.Arbitrary<Instrument> =>
  fc
    .record({
      id: fc.constant(id),
      tag: fc.constant(tag),
      measures: anyName,
      calibratedOn: pastDay,
      dueOn: anyDay,
      certificate: anyName,
      outOfUse: fc.boolean(),
    })
    .map((one) => (one.dueOn > one.calibratedOn ? one : { ...one, dueOn: DAYS.at(-1) ?? one.dueOn }))

const anyInstruments: fc.Arbitrary<readonly Instrument[]> = fc
  .subarray([...INSTRUMENT_IDS])
  .chain((ids) => fc.tuple(...ids.map((id, index) => anyInstrument(id, NAMES[index] ?? id))))

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

/** Under a name that a parts list made up of any names may list. */
const anyPart: fc.Arbitrary<ListedPart> = fc.record({
  code: anyName,
  revision: fc.integer({ min: 1, max: 9 }),
  digest: fc.constant('0'.repeat(64)),
  approved: fc.boolean(),
  withdrawn: fc.boolean(),
  values: anyRow(PART_COLUMNS) as fc.Arbitrary<PartValues>,
})

/** Anything that can be recorded of a programme beside its specification: every kind of record, of every stage. */
export const anyRecords: fc.Arbitrary<ProgrammeRecords> = fc.record({
  lots: fc.uniqueArray(anyLot, { maxLength: 5, selector: ({ code }) => code }),
  deliveries: fc.array(anyLot, { maxLength: 3 }),
  logs: anyLogs,
  inspections: fc.array(anyInspection, { maxLength: 5 }),
  instruments: anyInstruments,
  parts: fc.uniqueArray(anyPart, { maxLength: 5, selector: ({ code }) => code }),
  byKind: anyByKind,
})

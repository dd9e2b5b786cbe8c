import {
  dayOf,
  declaredColumns,
  exportTable,
  instantOf,
  numberOf,
  textOf,
  type ExportTable,
} from '@/lib/exports/tables/export-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'
import { assembliesOnRecord, assemblyLife, type AssemblyLife } from '@/shared/records/assembly-life'
import { findCharacteristic } from '@/shared/records/characteristics'
import type { Inspection } from '@/shared/records/inspection'
import type { Log } from '@/shared/records/log'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import type { Readings } from '@/shared/records/readings'
import { everyLog, logOfCode } from '@/shared/records/every-log'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/* Tables of what was recorded; undefined where nothing of that name is there. */

export const lotsTable = ({ state }: ProgrammeView): ExportTable =>
  exportTable<Lot>(
    'lots',
    [
      textOf('Lot', ({ code }) => code),
      textOf('Kind', ({ kind }) => kind),
      textOf('Part', ({ part }) => part),
      textOf('Supplier', ({ supplier }) => supplier),
      textOf('Date code', ({ dateCode }) => dateCode),
      dayOf('Received', ({ receivedOn }) => receivedOn),
      numberOf('Quantity, pieces', ({ quantity }) => quantity),
      textOf('Packing', ({ storage }) => storage.packing),
      numberOf('Storage temperature, °C', ({ storage }) => storage.temperatureC),
      numberOf('Storage humidity, % RH', ({ storage }) => storage.relativeHumidityPct),
      textOf('Supplier’s result', ({ supplierResult }) => supplierResult),
      textOf('Decision', ({ disposition }) => disposition?.verdict),
      textOf('Decided by', ({ disposition }) => disposition?.by),
      dayOf('Decided on', ({ disposition }) => disposition?.on.slice(0, 10)),
      textOf('Went into', ({ usedIn }) => usedIn.join(' ')),
    ],
    state.facts.records.lots,
  )

interface TestedRow {
  readonly lot: Lot
  readonly test: LotTest
}

const testsOf = ({ state }: ProgrammeView): TestedRow[] =>
  state.facts.records.lots.flatMap((lot) => lot.tests.map((test) => ({ lot, test })))

export const lotTestsTable = (view: ProgrammeView): ExportTable =>
  exportTable<TestedRow>(
    'lot-tests',
    [
      textOf('Lot', ({ lot }) => lot.code),
      textOf('Test', ({ test }) => ownMember(TEST_METHODS, test.method)?.label ?? test.method),
      dayOf('Tested on', ({ test }) => test.testedOn),
      textOf('Tested by', ({ test }) => test.testedBy),
      numberOf('Readings', ({ test }) => test.readings.count),
      textOf('Conditions', ({ test }) =>
        Object.entries(test.conditions)
          .map(([name, value]) => `${name}: ${String(value)}`)
          .join('; '),
      ),
    ],
    testsOf(view),
  )

/** The readings of one test of a lot, by the test's id. */
export function testReadingsTable(view: ProgrammeView, id: string): ExportTable | undefined {
  const found = testsOf(view).find(({ test }) => test.id === id)
  const method = found && ownMember(TEST_METHODS, found.test.method)
  if (!method) return undefined
  return exportTable(
    `${found.lot.code}-${method.key}-${found.test.testedOn}`,
    declaredColumns(method.columns),
    rowsOf(found.test.readings),
  )
}

export const logsTable = ({ state }: ProgrammeView): ExportTable =>
  exportTable<Log>(
    'logs',
    [
      textOf('Log', ({ code }) => code),
      textOf('Characteristic', ({ characteristic }) => findCharacteristic(characteristic)?.label),
      textOf('Line', ({ line }) => line),
      textOf('Machine', ({ machine }) => machine),
      numberOf('Readings', ({ readings }) => readings.count),
      instantOf('Newest', ({ readings: { count, columns } }) => columns['at']?.[count - 1]),
    ],
    everyLog(state.facts.records),
  )

/** The readings of one log, by its code. */
export function logReadingsTable({ state }: ProgrammeView, code: string): ExportTable | undefined {
  const log = logOfCode(state.facts.records, code)
  const characteristic = log && findCharacteristic(log.characteristic)
  if (!characteristic) return undefined
  return exportTable(
    log.code,
    [
      instantOf('Time', (row: Readonly<Record<string, unknown>>) => row['at'] as number),
      ...declaredColumns(characteristic.columns),
    ],
    rowsOf(log.readings),
  )
}

/** All records of one kind, by its key. */
export function recordsTable({ state }: ProgrammeView, key: string): ExportTable | undefined {
  const kind: RecordKind | undefined = ownMember(RECORD_KINDS, key)
  if (!kind) return undefined
  return exportTable<Readonly<Record<string, unknown>>>(
    key,
    declaredColumns(kind.columns),
    recordsOfKind(state.facts.records, kind.key as RecordKindKey),
  )
}

export const inspectionsTable = ({ state }: ProgrammeView): ExportTable =>
  exportTable<Inspection>(
    'inspections',
    [
      textOf('Assembly', ({ assembly }) => assembly),
      dayOf('Inspected on', ({ inspectedOn }) => inspectedOn),
      textOf('Inspector', ({ inspector }) => inspector),
      numberOf('Magnification, ×', ({ magnification }) => magnification),
      numberOf('Joints seen', ({ jointsSeen }) => jointsSeen),
      numberOf('Defects', ({ defects }) => defects.length),
      textOf('Note', ({ note }) => note),
    ],
    state.facts.records.inspections,
  )

export const defectsTable = ({ state }: ProgrammeView): ExportTable =>
  exportTable<{ inspection: Inspection; defect: Inspection['defects'][number] }>(
    'defects',
    [
      textOf('Assembly', ({ inspection }) => inspection.assembly),
      dayOf('Inspected on', ({ inspection }) => inspection.inspectedOn),
      textOf('Joint', ({ defect }) => defect.joint),
      textOf('Defect', ({ defect }) => defect.kind),
      numberOf('Across, mm', ({ defect }) => defect.xMm),
      numberOf('Up, mm', ({ defect }) => defect.yMm),
      textOf('Note', ({ defect }) => defect.note),
    ],
    state.facts.records.inspections.flatMap((inspection) =>
      inspection.defects.map((defect) => ({ inspection, defect })),
    ),
  )

/** Every assembly on record, with what is on record of it. */
export const assembliesTable = ({ state: { facts } }: ProgrammeView): ExportTable =>
  exportTable<{ readonly serial: string; readonly life: AssemblyLife | undefined }>(
    'assemblies',
    [
      textOf('Serial number', ({ serial }) => serial),
      textOf('Lots', ({ life }) => life?.lots.map(({ code }) => code).join('; ')),
      numberOf('Inspections', ({ life }) => life?.inspections.length),
      numberOf('Defects', ({ life }) =>
        life?.inspections.reduce((sum, { defects }) => sum + defects.length, 0),
      ),
      dayOf('First on record', ({ life }) => life?.events.find(({ on }) => on !== '')?.on),
      dayOf('Last on record', ({ life }) => life?.events.findLast(({ on }) => on !== '')?.on),
      numberOf(
        'Other records',
        ({ life }) => life?.events.filter(({ from }) => from.kind === 'record').length,
      ),
    ],
    assembliesOnRecord(facts.records).map((serial) => ({
      serial,
      life: assemblyLife(facts.records, serial),
    })),
  )

/** Readings as rows, each made when it is asked for. */
function rowsOf({ count, columns }: Readings): readonly Readonly<Record<string, unknown>>[] {
  const names = Object.keys(columns)
  return Array.from({ length: count }, (_, index) =>
    Object.fromEntries(names.map((name) => [name, columns[name]![index]])),
  )
}

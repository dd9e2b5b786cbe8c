import { characteristicName, methodName, recordKindName } from '@/shared/commands/named'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'
import type { Place } from '@/shared/place'
import { counted } from '@/shared/quantity/counted'
import { formatQuantity } from '@/shared/quantity/format'
import {
  correctedInWords,
  fieldsCorrected,
  inspectionFieldsCorrected,
  lotFieldsCorrected,
  testFieldsCorrected,
  type CorrectedField,
  type CorrectedValues,
} from '@/shared/records/correction'
import type { Inspection } from '@/shared/records/inspection'
import type { Instrument } from '@/shared/records/instrument'
import type { Log } from '@/shared/records/log'
import type { Lot, LotTest } from '@/shared/records/lot'
import { dispositionInWords } from '@/shared/records/lot-identity'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import { recordInWords } from '@/shared/records/record-in-words'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import type { RecordPart } from '@/shared/rules/record-source'
import type { ListedPart } from '@/shared/works/listed-part'
import type { Origins } from './origins'
import type { WhyStep } from './step'

/** The newest of each sort are told; how many there are besides is said. */
export const RECORDS_TOLD = 25

/** The rows that a part of the records holds, the newest first, and how many are left out. */
function newest<T>(rows: readonly T[]): { readonly told: readonly T[]; readonly left: number } {
  return { told: rows.slice(-RECORDS_TOLD).toReversed(), left: Math.max(0, rows.length - RECORDS_TOLD) }
}

/** A part of the records that a rule reads, down to who recorded what, and with which instrument. */
export function recordOrigin(
  label: string,
  part: RecordPart,
  records: ProgrammeRecords,
  origins: Origins,
): WhyStep {
  const of = <T>(rows: readonly T[], noun: readonly [string, string], step: (row: T) => WhyStep): WhyStep => {
    const { told, left } = newest(rows)
    return {
      what: label,
      says: rows.length === 0 ? 'nothing recorded' : counted(rows.length, ...noun),
      ...(left > 0 && {
        lines: [`The newest ${RECORDS_TOLD} follow; ${left} earlier ones are in the records.`],
      }),
      rests: told.map(step),
    }
  }
  switch (part.is) {
    case 'lots':
      return of(records.lots, ['lot', 'lots'], (lot) => lotStep(lot, records, origins))
    case 'deliveries':
      return of(records.deliveries, ['lot', 'lots'], (lot) => deliveryStep(lot, origins))
    case 'logs':
      return of(records.logs.get(part.of) ?? [], ['log', 'logs'], (log) => logStep(log, records, origins))
    case 'all logs':
      return of([...records.logs.values()].flat(), ['log', 'logs'], (log) => logStep(log, records, origins))
    case 'inspections':
      return of(records.inspections, ['inspection', 'inspections'], (one) => inspectionStep(one, origins))
    case 'instruments':
      return of(records.instruments, ['instrument', 'instruments'], instrumentStep)
    case 'parts':
      return of(records.parts, ['part', 'parts'], partStep)
    case 'records':
      return of(records.byKind.get(part.of) ?? [], ['record', 'records'], (row) =>
        recordStep(part.of, row, origins),
      )
  }
}

/** Ids of all that `recordOrigin` tells of a part, to read who recorded them. */
export function idsTold(part: RecordPart, records: ProgrammeRecords): string[] {
  const ids = (rows: readonly { readonly id: string }[]) => newest(rows).told.map(({ id }) => id)
  switch (part.is) {
    case 'lots':
      return newest(records.lots).told.flatMap(({ id, tests }) => [id, ...tests.map((test) => test.id)])
    case 'deliveries':
      return ids(records.deliveries)
    case 'logs':
      return ids(records.logs.get(part.of) ?? [])
    case 'all logs':
      return ids([...records.logs.values()].flat())
    case 'inspections':
      return ids(records.inspections)
    case 'instruments':
    case 'parts':
      return []
    case 'records':
      return ids(records.byKind.get(part.of) ?? [])
  }
}

const recordedBy = ({ recorded }: Origins, id: string): Partial<WhyStep> => {
  const by = recorded.get(id)
  return by ? { by, recorded: { at: by.at, name: id } } : {}
}

function lotStep(lot: Lot, records: ProgrammeRecords, origins: Origins): WhyStep {
  const { disposition } = lot
  return {
    what: `Lot ${lot.code}, ${lot.part}`,
    says: `${formatQuantity(lot.quantity, 'pieces', 9)} from ${lot.supplier}, received on ${lot.receivedOn}`,
    ...recordedBy(origins, lot.id),
    place: { kind: 'lot', lot: lot.code },
    lines: [
      disposition
        ? `${dispositionInWords(lot)} by ${disposition.by} on ${disposition.on}: ${disposition.reason}`
        : 'no disposition yet',
    ],
    rests: [
      ...correctionSteps(origins, lot.id, lotFieldsCorrected),
      ...lot.tests.map((test) => testStep(test, lot, records, origins)),
    ],
  }
}

/** Of another programme, or of none: what became of it is told where it is recorded. */
const deliveryStep = (lot: Lot, origins: Origins): WhyStep => ({
  what: `Lot ${lot.code}, ${lot.part}`,
  says: `${formatQuantity(lot.quantity, 'pieces', 9)} from ${lot.supplier}, received on ${lot.receivedOn}, ${counted(lot.tests.length, 'test', 'tests')}`,
  ...recordedBy(origins, lot.id),
  lines: [dispositionInWords(lot)],
})

function testStep(test: LotTest, lot: Lot, records: ProgrammeRecords, origins: Origins): WhyStep {
  return {
    what: `${methodName(test.method)}, ${counted(test.readings.count, 'reading', 'readings')}`,
    says: `by ${test.testedBy} on ${test.testedOn}`,
    ...recordedBy(origins, test.id),
    place: { kind: 'lot', lot: lot.code },
    rests: [
      ...correctionSteps(origins, test.id, (before, after) =>
        testFieldsCorrected(ownMember(TEST_METHODS, test.method), before, after),
      ),
      ...batchSteps(origins, test.id),
      ...usedInstrument(test.instrumentId, records),
    ],
  }
}

const logStep = (log: Log, records: ProgrammeRecords, origins: Origins): WhyStep => ({
  what: `Log ${log.code}, ${characteristicName(log.characteristic)}`,
  says: `${counted(log.readings.count, 'reading', 'readings')} of ${log.machine}, ${log.line}`,
  ...recordedBy(origins, log.id),
  place: { kind: 'log', log: log.code },
  rests: [...batchSteps(origins, log.id), ...usedInstrument(log.instrumentId, records)],
})

/** The newest batches; a machine that pushes readings makes many. */
function batchSteps({ batches }: Origins, id: string): WhyStep[] {
  const { told, left } = newest(batches.get(id) ?? [])
  return [
    ...told.map(({ id: batch, count, sha256, by, at }) => ({
      what: `${counted(count, 'reading', 'readings')} at once`,
      ...(sha256 && { lines: [`From a file, SHA-256 ${sha256}`] }),
      by: { name: by, at },
      recorded: { at, name: batch },
    })),
    ...(left > 0 ? [{ what: `and ${counted(left, 'earlier batch', 'earlier batches')} of readings` }] : []),
  ]
}

const usedInstrument = (id: string | null, { instruments }: ProgrammeRecords): WhyStep[] =>
  instruments.filter((instrument) => instrument.id === id).map(instrumentStep)

const instrumentStep = ({
  tag,
  measures,
  calibratedOn,
  dueOn,
  certificate,
  outOfUse,
}: Instrument): WhyStep => ({
  what: `Instrument ${tag}, ${measures}`,
  says: `calibrated on ${calibratedOn}, due on ${dueOn}, certificate ${certificate}`,
  ...(outOfUse && { lines: ['Out of use today.'] }),
  place: { kind: 'instruments' },
})

const partStep = ({ code, revision, approved, withdrawn, values }: ListedPart): WhyStep => ({
  what: `Part ${code}, ${values.description}`,
  says: `revision ${revision}, ${withdrawn ? 'withdrawn' : approved ? 'approved' : 'not approved'}`,
  place: { kind: 'part', part: code },
})

const inspectionStep = (inspection: Inspection, origins: Origins): WhyStep => ({
  what: `Assembly ${inspection.assembly}`,
  says: `${counted(inspection.jointsSeen, 'joint inspected', 'joints inspected')} at ${inspection.magnification}×, ${counted(inspection.defects.length, 'defect', 'defects')}, by ${inspection.inspector} on ${inspection.inspectedOn}`,
  ...recordedBy(origins, inspection.id),
  place: { kind: 'inspection', inspection: inspection.id },
  rests: correctionSteps(origins, inspection.id, inspectionFieldsCorrected),
})

function recordStep(key: RecordKindKey, row: { readonly id: string }, origins: Origins): WhyStep {
  const { columns }: RecordKind = RECORD_KINDS[key]
  return {
    what: recordKindName(key),
    says: recordInWords(key, { ...row }),
    ...recordedBy(origins, row.id),
    place: { kind: 'record', recordKind: key, record: row.id } satisfies Place,
    rests: correctionSteps(origins, row.id, (before, after) => fieldsCorrected(columns, before, after)),
  }
}

const correctionSteps = (
  { corrections }: Origins,
  id: string,
  fieldsOf: (before: CorrectedValues, after: CorrectedValues) => readonly CorrectedField[],
): WhyStep[] =>
  (corrections.get(id) ?? []).map(({ number, before, after, reason, byName, at }) => ({
    what: `Correction ${number}`,
    says: correctedInWords(fieldsOf(before, after)),
    by: { name: byName, at },
    words: reason,
    recorded: { at, name: id },
  }))

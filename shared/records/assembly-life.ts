import { capitalised } from '@/shared/quantity/capitalised'
import { kindOf } from '@/shared/columns/column-kinds'
import { methodName } from '@/shared/methods/test-methods'
import type { Inspection } from './inspection'
import type { Lot } from './lot'
import { dispositionInWords } from './lot-identity'
import type { ProgrammeRecords } from './programme-records'
import type { RecordKind } from './record-kind'
import { RECORD_KINDS } from './record-kinds'
import { namesSerial, serialKey } from './serials-in-text'

/** Something that happened to an assembly or to a lot that it holds. */
export interface LifeEvent {
  /** 'YYYY-MM-DD'; '' where the record has no date. */
  readonly on: string
  readonly what: string
  readonly message: string
  readonly from:
    | { readonly kind: 'lot'; readonly code: string }
    | { readonly kind: 'inspection'; readonly id: string }
    | { readonly kind: 'record'; readonly recordKind: string }
}

/** An assembly with the lots it is made of and everything on record that touched it. */
export interface AssemblyLife {
  readonly serial: string
  readonly lots: readonly Lot[]
  readonly inspections: readonly Inspection[]
  readonly events: readonly LifeEvent[]
}

const KINDS: readonly RecordKind[] = Object.values(RECORD_KINDS)

type Row = { readonly id: string } & Readonly<Record<string, unknown>>

/** Every serial number on record, in order of their numbers. */
export function assembliesOnRecord({ lots, inspections, byKind }: ProgrammeRecords): string[] {
  const named = [
    ...lots.flatMap(({ usedIn }) => usedIn),
    ...inspections.map(({ assembly }) => assembly),
    ...KINDS.flatMap(({ key, assemblies }) =>
      assemblies?.one
        ? ((byKind.get(key) ?? []) as readonly Row[]).map((row) => String(row[assemblies.column]))
        : [],
    ),
  ]
  const byKey = new Map(named.reverse().map((serial) => [serialKey(serial), serial.trim()]))
  return [...byKey.values()].sort(counting.compare)
}
const counting = new Intl.Collator('en', { numeric: true })

/** What is on record of one assembly, oldest first; undefined when nothing names it. */
export function assemblyLife(records: ProgrammeRecords, serial: string): AssemblyLife | undefined {
  const key = serialKey(serial)
  const lots = records.lots.filter(({ usedIn }) => usedIn.some((one) => serialKey(one) === key))
  const inspections = records.inspections.filter(({ assembly }) => serialKey(assembly) === key)
  const ofRecords = eventsOfRecords(records, serial)
  if (lots.length + inspections.length + ofRecords.length === 0) return undefined
  const events = [...lots.flatMap(eventsOfLot), ...inspections.map(eventOfInspection), ...ofRecords]
  return { serial, lots, inspections, events: events.sort(byDay) }
}

const byDay = (one: LifeEvent, other: LifeEvent): number =>
  one.on === other.on ? 0 : one.on < other.on ? -1 : 1

function eventsOfLot({ code, part, receivedOn, supplier, tests, disposition }: Lot): LifeEvent[] {
  const from = { kind: 'lot', code } as const
  return [
    { on: receivedOn, what: `Lot ${code} received`, message: `${part}, ${supplier}`, from },
    ...tests.map(({ method, testedOn, testedBy }) => ({
      on: testedOn,
      what: `Lot ${code} tested`,
      message: `${methodName(method)}, ${testedBy}`,
      from,
    })),
    ...(disposition
      ? [
          {
            on: disposition.on,
            what: `Lot ${code} ${dispositionInWords({ disposition })}`,
            message: `${disposition.by}: ${disposition.reason}`,
            from,
          },
        ]
      : []),
  ]
}

function eventOfInspection({ id, inspectedOn, inspector, jointsSeen, defects }: Inspection): LifeEvent {
  const found = defects.map(({ kind, joint }) => `${kind} at ${joint}`).join('; ') || 'no defect'
  return {
    on: inspectedOn,
    what: 'Inspected',
    message: `${inspector}, ${jointsSeen} joints inspected: ${found}`,
    from: { kind: 'inspection', id },
  }
}

function eventsOfRecords({ byKind }: ProgrammeRecords, serial: string): LifeEvent[] {
  return KINDS.flatMap((kind) => {
    if (!kind.assemblies) return []
    const naming = kind.assemblies.column
    return ((byKind.get(kind.key) ?? []) as readonly Row[])
      .filter((row) => namesSerial(String(row[naming] ?? ''), serial))
      .map((row) => eventOfRecord(kind, row, naming))
  })
}

function eventOfRecord(kind: RecordKind, row: Row, naming: string): LifeEvent {
  const [dated] = Object.entries(kind.columns).find(([, column]) => column.kind === 'date') ?? []
  const message = Object.entries(kind.columns)
    .filter(([name]) => name !== naming && name !== dated && row[name] !== undefined && row[name] !== '')
    .map(([name, column]) => `${column.label.toLowerCase()} ${kindOf(column).inSentence(column, row[name])}`)
  return {
    on: dated ? String(row[dated] ?? '') : '',
    what: capitalised(kind.label),
    message: message.join(', '),
    from: { kind: 'record', recordKind: kind.key },
  }
}

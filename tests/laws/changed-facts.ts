import type { ListedPart } from '@/shared/works/listed-part'
import type { Column } from '@/shared/columns/column'
import type { Parameter } from '@/shared/plan/parameter'
import type { Limit } from '@/shared/plan/requirement'
import { addDays } from '@/shared/quantity/calendar'
import { numberOrRangeTyped } from '@/shared/quantity/range-text'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import { DISPOSITIONS, type Lot, type LotTest } from '@/shared/records/lot'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import type { Readings } from '@/shared/records/readings'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS, type TestMethodKey } from '@/shared/methods/test-methods'
import type { Facts } from '@/shared/rules/facts'
import { readableOf, type AnyRule } from '@/shared/rules/rule'
import { requirement } from '../rules/facts-builder'

/** Random numbers from 0 to 1 that come again with the same seed. */
export type Random = () => number

/** Mulberry32, a public-domain generator: good enough to choose what to change. */
export function randomFrom(seed: number): Random {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

const pick = <T>(random: Random, from: readonly T[]): T => from[Math.floor(random() * from.length)]!

/** The same facts with one to three things that a rule reads changed, each as a person might have entered it. */
export function changedFacts(random: Random, rule: AnyRule, facts: Facts): Facts {
  const reads = Object.values(rule.reads).map(readableOf)
  const times = 1 + Math.floor(random() * 4)
  let changed = facts
  for (let time = 0; time < times; time++) {
    const read = pick(random, reads)
    if (read.source === 'parameter') changed = withParameter(random, changed, read)
    if (read.source === 'limit') changed = withLimit(random, changed, read)
    if (read.source === 'today')
      changed = { ...changed, today: addDays(changed.today, Math.round((random() - 0.5) * 900)) }
    if (read.source === 'records')
      changed = { ...changed, records: withRecords(random, changed.records, read.key) }
  }
  return changed
}

function withParameter(random: Random, facts: Facts, { key, shape, schema }: Parameter): Facts {
  const values = new Map(facts.values)
  const value = values.get(key)
  if (random() < 0.05) values.delete(key)
  else if (shape.kind === 'field') values.set(key, changedCell(random, shape.column, value))
  else if (value === undefined || random() < 0.1) values.set(key, anyRows(random, shape.columns))
  else
    values.set(
      key,
      changedRows(random, value as readonly Row[], (row) => changedRow(random, row, shape.columns)),
    )
  return !values.has(key) || schema.safeParse(values.get(key)).success ? { ...facts, values } : facts
}

type Row = Readonly<Record<string, unknown>>
type Columns = Readonly<Record<string, Column>>

/** One cell changed, as its column allows. */
function changedRow(random: Random, row: Row, columns: Columns): Row {
  const [name, column] = pick(random, Object.entries(columns))
  return { ...row, [name]: changedCell(random, column, row[name]) }
}

function changedCell(random: Random, column: Column, value: unknown): unknown {
  if (column.optional && random() < 0.2) return undefined
  switch (column.kind) {
    case 'number': {
      const { min, max, whole } = column
      const near = typeof value === 'number' ? changedNumber(random, value) : min + random() * (max - min)
      const inside = Math.min(max, Math.max(min, near))
      return whole ? Math.round(inside) : Number(inside.toPrecision(4))
    }
    case 'range': {
      const [one, other] = [0, 0].map(() =>
        Number((column.min + random() * (column.max - column.min)).toPrecision(4)),
      ) as [number, number]
      return random() < 0.5 ? one : (numberOrRangeTyped(`${one} to ${other}`) ?? one)
    }
    case 'choice':
      return pick(random, column.options).value
    case 'flag':
      return random() < 0.5
    case 'date':
      return typeof value === 'string' ? changedText(random, value) : '2026-02-03'
    case 'text':
      return typeof value === 'string' && random() < 0.5 ? `${value}x`.slice(0, column.maxLength) : 'Q-7'
  }
}

/** A count stays one; what is not negative stays so. */
function changedNumber(random: Random, value: number): number {
  const changed =
    random() < 0.2
      ? value + Math.round((random() - 0.5) * 8)
      : Number((value * 2 ** ((random() - 0.5) * 6)).toPrecision(4))
  const signed = value < 0 ? changed : Math.max(0, changed)
  return Number.isInteger(value) ? Math.round(signed) : signed
}

const DAY = /^\d{4}-\d{2}-\d{2}$/

function changedText(random: Random, text: string): string {
  if (DAY.test(text)) return addDays(text, Math.round((random() - 0.5) * 2 ** (random() * 10)))
  return random() < 0.5 ? text : `${text}x`
}

/** A row altered, left out or entered twice. */
function changedRows<T>(random: Random, rows: readonly T[], alter: (row: T) => T): T[] {
  if (rows.length === 0) return []
  const at = Math.floor(random() * rows.length)
  const way = random()
  if (way < 0.1) return rows.filter((_, position) => position !== at)
  if (way < 0.2) return [...rows, alter(rows[at]!)]
  return rows.map((row, position) => (position === at || way > 0.9 ? alter(row) : row))
}

function withLimit(random: Random, facts: Facts, limit: Limit): Facts {
  const factor = 2 ** ((random() - 0.5) * 6)
  const stated = requirement(limit, Number((limit.byDefault.value * factor).toPrecision(3)), {
    authority: 'company',
    relaxes: random() < 0.5,
  })
  return {
    ...facts,
    requirements: [...facts.requirements.filter((other) => other.limit !== limit.key), stated],
  }
}

function withRecords(random: Random, records: ProgrammeRecords, key: string): ProgrammeRecords {
  const [part = '', kind = ''] = key.split(':')
  switch (part) {
    case 'logs':
      return withLogs(random, records, kind || pick(random, Object.keys(CHARACTERISTICS)))
    case 'records':
      return withRows(random, records, kind as RecordKindKey)
    case 'lots':
    case 'deliveries': {
      const alter = (lot: Lot): Lot =>
        pick(random, [withTest, withDisposition, withChangedTests, withChangedTests, changedValue<Lot>])(
          random,
          lot,
        )
      return { ...records, [part]: changedRows(random, records[part], alter) }
    }
    case 'parts':
      return { ...records, parts: changedRows(random, records.parts, (row) => changedPart(random, row)) }
    case 'inspections':
    case 'instruments': {
      const rows = changedRows<unknown>(random, records[part], (row) => changedValue(random, row))
      return { ...records, [part]: rows }
    }
    default:
      throw new Error(`The records ${key} are not known to this test.`)
  }
}

/** How a part stands, its moisture level, or one of its numbers; what else is chosen of a list stays. */
function changedPart(random: Random, part: ListedPart): ListedPart {
  const { values } = part
  const numbers = Object.entries(values).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number',
  )
  const [column, value] = numbers.length > 0 ? pick(random, numbers) : []
  return pick(random, [
    { ...part, approved: !part.approved },
    { ...part, withdrawn: !part.withdrawn },
    { ...part, revision: part.revision + 1 },
    { ...part, values: { ...values, moistureLevel: pick(random, ['1', '2', '3']) } },
    ...(column !== undefined && value !== undefined
      ? [{ ...part, values: { ...values, [column]: changedNumber(random, value) } }]
      : []),
  ])
}

/** Rows of a kind that has none yet are made up, as its columns allow. */
function withRows(random: Random, records: ProgrammeRecords, kind: RecordKindKey): ProgrammeRecords {
  const held = records.byKind.get(kind) ?? []
  const rows =
    held.length === 0 || random() < 0.1
      ? anyRows(random, RECORD_KINDS[kind].columns).map((row, index) => ({ ...row, id: `${kind} ${index}` }))
      : changedRows(random, held, (row) => ({
          ...row,
          ...changedRow(random, row, RECORD_KINDS[kind].columns),
        }))
  return { ...records, byKind: new Map(records.byKind).set(kind, rows) }
}

const anyRows = (random: Random, columns: Columns): Row[] =>
  Array.from({ length: 1 + Math.floor(random() * 4) }, () => anyRow(random, columns))

const anyRow = (random: Random, columns: Columns): Row =>
  Object.fromEntries(
    Object.entries(columns).map(([name, column]) => [name, changedCell(random, column, undefined)]),
  )

function withLogs(random: Random, records: ProgrammeRecords, characteristic: string): ProgrammeRecords {
  const held = records.logs.get(characteristic) ?? []
  const logs =
    held.length === 0
      ? [anyLog(random, characteristic as CharacteristicKey, records)]
      : held.map((log) => ({
          ...log,
          readings: changedReadings(
            random,
            log.readings,
            CHARACTERISTICS[characteristic as CharacteristicKey].columns,
          ),
        }))
  return { ...records, logs: new Map(records.logs).set(characteristic, logs) }
}

const MORNING = Date.UTC(2026, 1, 2, 8)
const MINUTE_MS = 60_000

function anyLog(random: Random, characteristic: CharacteristicKey, { instruments }: ProgrammeRecords): Log {
  const rows = Array.from({ length: 3 + Math.floor(random() * 6) }, () =>
    anyRow(random, CHARACTERISTICS[characteristic].columns),
  )
  return {
    id: characteristic,
    code: 'X-1',
    characteristic,
    line: '1',
    machine: '',
    instrumentId: instruments.length > 0 ? pick(random, instruments).id : null,
    readings: columnsOf(rows, { at: rows.map((_, index) => MORNING + index * MINUTE_MS) }),
  }
}

const withDisposition = (random: Random, lot: Lot): Lot => ({
  ...lot,
  disposition: pick(random, [
    null,
    ...DISPOSITIONS.map((verdict) => ({ verdict, by: 'A. Ward', on: lot.receivedOn, reason: 'Seen.' })),
  ]),
})

const withChangedTests = (random: Random, lot: Lot): Lot => ({
  ...lot,
  tests: changedRows(random, lot.tests, (test) => changedTest(random, test)),
})

function changedTest(random: Random, test: LotTest): LotTest {
  const { conditions, columns } = TEST_METHODS[test.method as TestMethodKey]
  if (Object.keys(conditions).length > 0 && random() < 0.4)
    return {
      ...test,
      conditions: changedRow(random, test.conditions, conditions) as LotTest['conditions'],
    }
  return { ...test, readings: changedReadings(random, test.readings, columns) }
}

/** One cell changed, or many of a column. */
function changedReadings(random: Random, readings: Readings, columns: Columns): Readings {
  const [name, column] = pick(random, Object.entries(columns))
  const cells = readings.columns[name] ?? Array<null>(readings.count).fill(null)
  const at = random() < 0.5 ? Math.floor(random() * cells.length) : undefined
  const changed = cells.map((cell, position) =>
    at === undefined || at === position
      ? ((changedCell(random, column, cell ?? undefined) ?? null) as typeof cell)
      : cell,
  )
  return { ...readings, columns: { ...readings.columns, [name]: changed } }
}

/** A test of a lot by a method for its kind, its readings made up. */
function withTest(random: Random, lot: Lot): Lot {
  const methods = Object.values<TestMethod>(TEST_METHODS).filter(({ lotKinds }) =>
    lotKinds.includes(lot.kind),
  )
  const { key: method, conditions, columns } = pick(random, methods)
  const rows = Array.from({ length: 1 + Math.floor(random() * 30) }, () => anyRow(random, columns))
  const test = {
    id: `${lot.id} ${method}`,
    method,
    testedOn: addDays(lot.receivedOn, 1),
    testedBy: 'A. Ward',
    instrumentId: lot.tests[0]?.instrumentId ?? null,
    conditions: random() < 0.5 && lot.tests[0] ? lot.tests[0].conditions : anyRow(random, conditions),
    readings: columnsOf(rows, { specimen: rows.map((_, index) => `S${index + 1}`) }),
  }
  return { ...lot, tests: [...lot.tests, test as LotTest] }
}

function columnsOf(rows: readonly Row[], more: Readings['columns']): Readings {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))]
  const columns = names.map((name) => [name, rows.map((row) => row[name] ?? null)])
  return { count: rows.length, columns: { ...Object.fromEntries(columns), ...more } as Readings['columns'] }
}

/** One leaf of plain data changed, whichever; ids and words of closed lists are left. */
function changedValue<T>(random: Random, value: T): T {
  if (typeof value === 'number') return changedNumber(random, value) as T
  if (typeof value === 'string') return changedText(random, value) as T
  if (typeof value === 'boolean') return !value as T
  if (Array.isArray(value)) return changedRows(random, value, (entry) => changedValue(random, entry)) as T
  if (value === null || typeof value !== 'object') return value
  const names = Object.keys(value).filter((name) => !LEFT.test(name))
  const name = names.length === 0 ? undefined : pick(random, names)
  if (name === undefined) return value
  return { ...value, [name]: changedValue(random, value[name as keyof T]) }
}

/** What has its own way of being changed, too. */
const LEFT = /^(id|kind|tests|disposition)$|Id$/

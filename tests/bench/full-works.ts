import { randomUUID } from 'node:crypto'
import { perform } from '@/lib/commands/perform'
import { database } from '@/lib/db/client'

/* A works of 12 lines and 40 programmes with 500,000 readings, told through the door. */

const LINES = 12
export const PROGRAMMES = 40
export const READINGS = 500_000
const A_BATCH = 10_000
const START = Date.parse('2024-01-01T00:00:00Z')
const MINUTE = 60_000

const person = randomUUID()
const give: typeof perform = async (...given) => {
  const outcome = await perform(...given)
  if (!outcome.ok) throw new Error(outcome.message)
  return outcome
}
const key = () => ({ key: randomUUID() })

/** Who fills the works, of production there; with a password they can sign in. */
export async function addPerson(email: string, passwordHash: string | null = null): Promise<void> {
  await database().person.create({
    data: {
      id: person,
      email,
      name: 'Bench',
      passwordHash,
      worksDepartment: 'production',
      createdAt: new Date(),
    },
  })
}

/** The lines, the programmes and the readings, all of them. */
export async function fillWorks(): Promise<void> {
  for (let line = 0; line < LINES; line++) await openLine(line)
  for (let number = 0; number < PROGRAMMES; number++) await openProgramme(number)
  for (let first = 0; first < READINGS; first += A_BATCH)
    await addReadings((first / A_BATCH) % LINES, Math.floor(first / A_BATCH / LINES) * A_BATCH, A_BATCH)
}

export async function openLine(line: number): Promise<void> {
  await give(person, 'open-line', { code: `L${line}`, name: 'A line' }, key())
  await give(person, 'open-machine', { line: `L${line}`, code: `W${line}`, kind: 'wave' }, key())
  await give(
    person,
    'open-log',
    { machine: `W${line}`, code: `B${line}`, characteristic: 'bath-temperature', instrument: null },
    key(),
  )
}

async function openProgramme(number: number): Promise<void> {
  const code = `P-${number}`
  await give(
    person,
    'open-programme',
    {
      code,
      title: 'A board',
      department: 'production',
      productClass: '2',
      alloyFamily: 'tin-lead',
      serviceYears: 10,
      environment: 'GF',
      annualVolume: 100,
    },
    key(),
  )
  await give(person, 'state-line', { programme: code, line: `L${number % LINES}` }, key())
  const rows = Array.from({ length: 20 }, (_, day) => ({
    doneOn: new Date(START + day * 24 * 60 * MINUTE).toISOString().slice(0, 10),
    worker: 'A',
    skill: 'machine-soldering',
    assemblies: 5,
    line: `L${number % LINES}`,
  }))
  await give(person, 'add-record', { programme: code, kind: 'soldering-run', rows }, key())
}

/** Readings of the wave of one line, a minute apart. */
export const addReadings = (line: number, first: number, count: number) =>
  give(
    person,
    'add-readings',
    {
      machine: `W${line}`,
      log: `B${line}`,
      readings: {
        count,
        columns: {
          at: Array.from({ length: count }, (_, index) => START + (first + index) * MINUTE),
          bathC: Array.from({ length: count }, (_, index) => 245 + ((first + index) % 7) / 2),
        },
      },
      file: null,
      mapping: null,
    },
    key(),
  )

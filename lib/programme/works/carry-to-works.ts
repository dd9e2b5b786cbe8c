import { randomUUID } from 'node:crypto'
import { INSTALLATION_TRAIL, lockTrail, openTrail, recordEntry } from '@/lib/trail/append-entry'
import { database } from '@/lib/db/client'
import { inTransaction, type Transaction } from '@/lib/db/transaction'
import { log } from '@/lib/log/log'
import { THE_PROGRAM } from '@/lib/programme/the-program'
import { publishHead } from '@/lib/trail/publish-head'
import { findCharacteristic } from '@/shared/records/characteristics'
import type { TrailEntry } from '@/shared/trail/entry'
import { openedByName, type OpenedMachine } from './opened-by-name'

const CARRIED = 'carry-to-works'

/**
 * At the start, once: what programmes of an earlier version logged for themselves stands on machines of the works
 * from here on. Machines are one where line and machine are called alike, and each programme states the lines it
 * logged on. Nothing that was recorded is written anew: readings stay where their entries are. Who belongs to a
 * programme belongs to the works in the department of their first membership. Answers how many logs were carried.
 */
export async function carryToWorks(now = new Date()): Promise<number> {
  const waiting = await database().log.findMany({
    where: { machineId: null },
    select: { trailId: true },
    distinct: ['trailId'],
  })
  const entries: TrailEntry[] = []
  let carried = 0
  for (const { trailId } of waiting) {
    const done = await inTransaction((tx) => carryLogs(tx, trailId, now))
    carried += done.logs
    entries.push(...done.entries)
  }
  const people = await inTransaction((tx) => carryPeople(tx, now))
  for (const entry of people ? [...entries, people] : entries) await publishHead(entry)
  if (carried > 0) log.info('Logs were carried to machines of the works.', { carried })
  return carried
}

async function carryLogs(tx: Transaction, programmeId: string, now: Date) {
  const head = await lockTrail(tx, programmeId)
  if (!head) throw new Error('A programme has logs and no trail.')
  const at = now.toISOString()
  const logs = await tx.log.findMany({
    where: { trailId: programmeId, machineId: null },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  })
  const entries: TrailEntry[] = []
  const machines = new Map<string, OpenedMachine>()
  for (const row of logs) {
    const machine = await openedByName(
      tx,
      {
        line: row.line,
        machine: row.machine,
        kind: findCharacteristic(row.characteristic)?.takenAt ?? 'other',
      },
      at,
    )
    entries.push(...machine.entries)
    machines.set(row.id, machine)
    await tx.log.update({ where: { id: row.id }, data: { machineId: machine.id } })
  }
  const lines = await stateLines(tx, programmeId, [...machines.values()], at)
  const entry = await recordEntry(tx, head, {
    at,
    ...THE_PROGRAM,
    command: CARRIED,
    payload: {
      reason: 'What many boards share is kept once at the works; what was recorded here stays here.',
      logs: logs.map(({ id, code }) => {
        const { id: machineId, code: machine } = machines.get(id)!
        return { id, code, machineId, machine }
      }),
      lines,
    },
  })
  return { logs: logs.length, entries: [...entries, entry] }
}

/** The programme states every line that it logged on. */
async function stateLines(
  tx: Transaction,
  programmeId: string,
  machines: readonly OpenedMachine[],
  at: string,
) {
  const wanted = new Map(machines.map(({ lineId, line }) => [lineId, line]))
  const rows = [...wanted].map(([lineId, line]) => ({ id: randomUUID(), lineId, line }))
  await tx.programmeLine.createMany({
    data: rows.map(({ id, lineId }) => ({
      id,
      lineId,
      programmeId,
      statedById: THE_PROGRAM.actorId,
      at,
    })),
  })
  return rows
}

/**
 * Only who was added before people had a department in the works, and nobody a second time: where an entry says which
 * department somebody has, or that they have none, an administrator has decided that.
 */
async function carryPeople(tx: Transaction, now: Date): Promise<TrailEntry | undefined> {
  await openTrail(tx, INSTALLATION_TRAIL)
  const head = await lockTrail(tx, INSTALLATION_TRAIL)
  const before = await tx.trailEntry.findFirst({ where: { trailId: INSTALLATION_TRAIL, command: CARRIED } })
  if (!head || before) return undefined
  const people = await tx.$queryRaw<{ personId: string; name: string; department: string }[]>`
    SELECT DISTINCT ON (person."id") person."id"::text AS "personId", person."name", membership."department"
    FROM "Membership" AS membership JOIN "Person" AS person ON person."id" = membership."personId"
    WHERE person."worksDepartment" IS NULL AND NOT person."auditor" AND NOT person."administrator"
      AND NOT EXISTS (
        SELECT FROM "TrailEntry" AS entry
        WHERE entry."trailId" = ${INSTALLATION_TRAIL} AND entry."command" IN ('add-person', 'change-person')
          AND entry."payload"::jsonb ->> 'personId' = person."id"::text
          AND entry."payload"::jsonb ? 'worksDepartment')
    ORDER BY person."id", membership."since", membership."department"`
  if (people.length === 0) return undefined
  for (const { personId, department } of people)
    await tx.person.update({ where: { id: personId }, data: { worksDepartment: department } })
  return recordEntry(tx, head, {
    at: now.toISOString(),
    ...THE_PROGRAM,
    command: CARRIED,
    payload: { reason: 'Each in the department of their first membership of a programme.', people },
  })
}

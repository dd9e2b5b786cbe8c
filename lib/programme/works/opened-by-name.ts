import { randomUUID } from 'node:crypto'
import { openSubject } from '@/lib/commands/works/open-subject'
import type { Transaction } from '@/lib/db/transaction'
import { THE_PROGRAM } from '@/lib/programme/the-program'
import { openTrail, recordEntry } from '@/lib/trail/append-entry'
import type { TrailEntry } from '@/shared/trail/entry'
import type { MachineKind } from '@/shared/works/machine-kind'

/** A machine of the works, and the entries by which it and its line were opened just now. */
export interface OpenedMachine {
  readonly id: string
  readonly code: string
  readonly lineId: string
  readonly line: string
  readonly entries: readonly TrailEntry[]
}

interface ByName {
  readonly line: string
  readonly machine: string
  readonly kind: MachineKind
}

/**
 * The machine that is called so on the line that is called so; opened with its line where there is none. A machine
 * of the same name on another line is another machine: its code then names the line too.
 */
export async function openedByName(
  tx: Transaction,
  { line: lineName, machine, kind }: ByName,
  at: string,
): Promise<OpenedMachine> {
  const { line, entries } = await lineByName(tx, lineName, at)
  const codes = [machine, `${machine}, ${line.code}`]
  const known = await tx.machine.findFirst({ where: { lineId: line.id, code: { in: codes } } })
  if (known) return { id: known.id, code: known.code, lineId: line.id, line: line.code, entries }
  const taken = await tx.machine.findUnique({ where: { code: machine }, select: { id: true } })
  const opened = { id: randomUUID(), code: taken ? codes[1]! : machine, kind, lineId: line.id }
  await openSubject(tx, { id: opened.id, kind: 'machine', code: opened.code })
  await tx.machine.create({ data: { ...opened, openedById: THE_PROGRAM.actorId, openedAt: at } })
  const entry = await firstEntry(tx, opened.id, at, 'open-machine', { ...opened, line: line.code })
  return { ...opened, line: line.code, entries: [...entries, entry] }
}

async function lineByName(tx: Transaction, code: string, at: string) {
  const known = await tx.line.findUnique({ where: { code }, select: { id: true, code: true } })
  if (known) return { line: known, entries: [] }
  const line = { id: randomUUID(), code, name: code }
  await openSubject(tx, { id: line.id, kind: 'line', code })
  await tx.line.create({ data: { ...line, openedById: THE_PROGRAM.actorId, openedAt: at } })
  return { line, entries: [await firstEntry(tx, line.id, at, 'open-line', line)] }
}

async function firstEntry(
  tx: Transaction,
  trailId: string,
  at: string,
  command: string,
  payload: Readonly<Record<string, string>>,
): Promise<TrailEntry> {
  await openTrail(tx, trailId)
  return recordEntry(tx, { trailId, seq: 0, hash: '' }, { at, ...THE_PROGRAM, command, payload })
}

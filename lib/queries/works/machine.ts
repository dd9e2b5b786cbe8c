import { database } from '@/lib/db/client'
import { readLineStates, type LineState, type MachineState } from '@/lib/queries/works/line-states'
import { machineTokens, type MachineTokenRow } from '@/lib/queries/machine-tokens'
import { namesOf } from '@/lib/programme/names-of'

/** A machine with its line and its logs as they stand. */
export interface MachineView {
  readonly line: LineState
  readonly machine: MachineState
}

/** Undefined when the works have no machine of that code. */
export async function readMachine(code: string): Promise<MachineView | undefined> {
  const found = await database().machine.findUnique({
    where: { code },
    select: { id: true, line: { select: { code: true } } },
  })
  if (!found) return undefined
  const [line] = await readLineStates(found.line.code)
  const machine = line?.machineStates.find(({ id }) => id === found.id)
  return line && machine && { line, machine }
}

/** A machine's token with who let it in. */
export type TokenOfMachine = MachineTokenRow & { readonly byName: string }

export async function readTokens(machineId: string): Promise<TokenOfMachine[]> {
  const tokens = await machineTokens(machineId)
  const nameOf = await namesOf(
    database(),
    tokens.map(({ createdById }) => createdById),
  )
  return tokens.map((token) => ({ ...token, byName: nameOf(token.createdById) }))
}

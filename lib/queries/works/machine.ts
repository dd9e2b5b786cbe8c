import { database } from '@/lib/db/client'
import { readLineStates, type LineState, type MachineState } from '@/lib/queries/works/line-states'
import { machineTokens, type MachineTokenRow } from '@/lib/queries/machine-tokens'
import { namesOf } from '@/lib/programme/names-of'

/** A machine with its line, its logs as they stand, and its tokens with who let them in. */
export interface MachineView {
  readonly line: LineState
  readonly machine: MachineState
  readonly tokens: readonly (MachineTokenRow & { readonly byName: string })[]
}

/** Undefined when the works have no machine of that code. */
export async function readMachine(code: string): Promise<MachineView | undefined> {
  const found = await database().machine.findUnique({
    where: { code },
    select: { id: true, line: { select: { code: true } } },
  })
  if (!found) return undefined
  const [[line], tokens] = await Promise.all([readLineStates(found.line.code), machineTokens(found.id)])
  const machine = line?.machineStates.find(({ id }) => id === found.id)
  if (!line || !machine) return undefined
  const nameOf = await namesOf(
    database(),
    tokens.map(({ createdById }) => createdById),
  )
  return { line, machine, tokens: tokens.map((token) => ({ ...token, byName: nameOf(token.createdById) })) }
}

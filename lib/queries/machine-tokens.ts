import { database } from '@/lib/db/client'
import { logName } from '@/shared/works/log-name'

/** A token as the page of a machine lists it. */
export interface MachineTokenRow {
  readonly id: string
  readonly name: string
  readonly createdAt: Date
  readonly createdById: string
  readonly revokedAt: Date | null
}

/** Every token of a machine, or those that a programme gave before machines had their own; those in use first. */
export const machineTokens = (trailId: string): Promise<MachineTokenRow[]> =>
  database().machineToken.findMany({
    where: { trailId },
    select: { id: true, name: true, createdAt: true, createdById: true, revokedAt: true },
    orderBy: [{ revokedAt: { sort: 'desc', nulls: 'first' } }, { createdAt: 'desc' }],
  })

/** Whose a token is and what it pushes into: a machine's logs, or those that a programme had. Undefined when it is unknown or stopped. */
export async function machineBehind(tokenHash: string) {
  const token = await database().machineToken.findUnique({
    where: { tokenHash },
    select: { name: true, createdById: true, revokedAt: true, trailId: true, subject: true },
  })
  return token && !token.revokedAt ? token : undefined
}
export type MachineBehind = NonNullable<Awaited<ReturnType<typeof machineBehind>>>

/** A log by what its machine calls it. */
export interface LogAtMachine {
  readonly machine: string
  readonly log: string
  readonly characteristic: string
}

/** The log that a token's calls name by its code; undefined when there is none. */
export async function logBehind(
  { trailId, subject }: MachineBehind,
  code: string,
): Promise<LogAtMachine | undefined> {
  const logs = await database().log.findMany({
    where: subject.kind === 'machine' ? { machineId: trailId } : { trailId, code },
    select: { code: true, characteristic: true, subject: true, atMachine: { select: { code: true } } },
  })
  const found = logs.find((log) => subject.kind !== 'machine' || logName(log.code, log.subject) === code)
  if (!found?.atMachine) return undefined
  return {
    machine: found.atMachine.code,
    log: logName(found.code, found.subject),
    characteristic: found.characteristic,
  }
}

import { database } from '@/lib/db/client'

/** A token as the page of the logs lists it. */
export interface MachineTokenRow {
  readonly id: string
  readonly name: string
  readonly createdAt: Date
  readonly createdById: string
  readonly revokedAt: Date | null
}

/** Every token of a programme, those in use first. */
export const machineTokens = (programmeId: string): Promise<MachineTokenRow[]> =>
  database().machineToken.findMany({
    where: { programmeId },
    select: { id: true, name: true, createdAt: true, createdById: true, revokedAt: true },
    orderBy: [{ revokedAt: { sort: 'desc', nulls: 'first' } }, { createdAt: 'desc' }],
  })

/** Whose a token is and which programme it is for; undefined when it is unknown or stopped. */
export async function machineBehind(tokenHash: string) {
  const token = await database().machineToken.findUnique({
    where: { tokenHash },
    select: {
      name: true,
      createdById: true,
      revokedAt: true,
      programme: { select: { id: true, code: true } },
    },
  })
  return token && !token.revokedAt ? token : undefined
}

/** What a log of a programme records; undefined when there is no such log. */
export async function characteristicOfLog(programmeId: string, code: string): Promise<string | undefined> {
  const log = await database().log.findUnique({
    where: { programmeId_code: { programmeId, code } },
    select: { characteristic: true },
  })
  return log?.characteristic
}

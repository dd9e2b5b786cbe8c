import { readRecorded, type Recorded } from '@/lib/queries/recorded'

/** What is recorded of one log of a machine and stands, oldest first: answers to signals, resets of its limits. */
export const readMachineRecords = async (machineId: string, log: string): Promise<Recorded[]> =>
  // By what stands: a correction may have set right which log was meant.
  (await readRecorded({ trailId: machineId, withdrawnAt: null })).filter(
    ({ values }) => values['log'] === log,
  )

/** One of them, withdrawn or not; undefined when the machine has none of that id. */
export async function readMachineRecord(machine: string, id: string): Promise<Recorded | undefined> {
  const [record] = await readRecorded({ id, subject: { kind: 'machine', code: machine } })
  return record
}

import type { TableName } from '@/shared/stored/covered-tables'
import { Attacker } from '@/tests/commands/attacker'
import {
  everyCommandOnce,
  somePartOfTheWorks,
  somethingInStore,
  somethingOfTheWorks,
  whatIsKeptOnce,
} from '@/tests/commands/every-command-once'
import { freshInstallation } from '@/tests/setup/installation'

/** An installation in which every command was performed once, and somebody who can write its tables past the door. */
export async function everythingRecorded() {
  const db = await freshInstallation()
  const world = await everyCommandOnce()
  const { id } = await db.client.programme.findUniqueOrThrow({ where: { code: world.code } })
  const machine = await somethingOfTheWorks(world)
  const kept = await whatIsKeptOnce(world)
  const supplier = await somethingInStore(world)
  const part = await somePartOfTheWorks(world)
  // The bare tables of the works, and what only they hold, are attacked in the trail that tells of them.
  const trails: Partial<Record<TableName, string>> = {
    ...{ Machine: machine.id, Log: machine.id, MachineToken: machine.id, Line: machine.lineId },
    ...{ Supplier: supplier.id, Lot: supplier.id, LotTest: supplier.id, LotAllocation: supplier.id },
    ...{ CompanyRule: kept.companyRules, CompanyPreference: kept.companyRules },
    ...{ Part: part.id, PartRevision: part.id, PartApproval: part.id },
    ReadingBatch: supplier.id,
  }
  const attacker = await Attacker.enter()
  return {
    /** The trail of the programme. */
    id,
    /** The trails of the people of the works and of the company's rules. */
    kept,
    /** The trail that tells of a table's rows. */
    trailOf: (table: TableName): string => trails[table] ?? id,
    attacker,
    leave: async () => {
      await attacker.leave()
      await db.drop()
    },
  }
}

export type EverythingRecorded = Awaited<ReturnType<typeof everythingRecorded>>

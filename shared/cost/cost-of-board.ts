import type { ProcessCost } from '@/shared/plan/parameters/soldering-process'
import { expectedReworkCost, type ExpectedReworkCost } from './rework-cost'

/** What one board costs by a process when so many are made in a year. */
export function costOfBoard(row: ProcessCost, joints: number, volume: number) {
  const rework = reworkToExpect(row, joints)
  const running = row.perBoard + row.perJoint * joints + rework.total
  return { rework, running, total: row.fixed / volume + running }
}

/** Rework and field repair to expect of one board with so many joints, by its process's row of costs. */
export const reworkToExpect = (row: ProcessCost, joints: number): ExpectedReworkCost =>
  expectedReworkCost({
    jointsPerBoard: joints,
    defectsPerMillionJoints: row.defectsPerMillion,
    shareFound: row.foundPct / 100,
    costOfRework: row.perRework,
    shareFailingInService: row.failingPct / 100,
    costOfFieldRepair: row.perFieldRepair,
  })

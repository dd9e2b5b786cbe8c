import { CONCESSION_STANDINGS, concessionName, concessionStatus } from '@/shared/gate/concession'
import type { ConcessionEntry } from '@/shared/gate/programme-state'
import type { Judged } from '@/lib/commands/signatures/load-judged'
import { Refused } from '@/shared/refused'

/** The concession of that number, still waiting for a decision on the finding it was asked for. */
export function openConcession({ state, judgement }: Judged, number: number): ConcessionEntry {
  const concession = state.concessions.find((entry) => entry.number === number)
  if (!concession) throw new Refused(`There is no concession ${number} in this programme.`)
  const status = concessionStatus(concession, judgement.findings.get(concession.rule), state.facts)
  if (!CONCESSION_STANDINGS[status].waits)
    throw new Refused(`${concessionName(concession)} cannot be decided: it is ${status}.`)
  return concession
}

import type { Finding } from '@/shared/rules/finding'
import { findingData } from './finding-data'
import type { ConcessionEntry, ProgrammeState } from './programme-state'

/** The state of a concession today. */
export type ConcessionStanding = 'asked' | 'granted' | 'refused' | 'expired' | 'no longer about this finding'

export function concessionStanding(
  concession: ConcessionEntry,
  finding: Finding | undefined,
  today: string,
): ConcessionStanding {
  if (concession.refused) return 'refused'
  if (!finding || findingData(finding) !== concession.findingData) return 'no longer about this finding'
  if (concession.untilOn !== null && concession.untilOn < today) return 'expired'
  return concession.design && concession.quality ? 'granted' : 'asked'
}

/** The granted concession that lets a failing finding pass, if there is one. */
export function concessionFor(
  finding: Finding,
  itemKey: string,
  state: ProgrammeState,
): ConcessionEntry | undefined {
  if (finding.verdict !== 'fails') return undefined
  return state.concessions.find(
    (concession) =>
      concession.itemKey === itemKey &&
      concession.rule === finding.rule &&
      concessionStanding(concession, finding, state.facts.today) === 'granted',
  )
}

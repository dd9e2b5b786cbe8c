import { CAN_BE_CONCEDED, type Finding } from '@/shared/rules/finding'
import { findingData } from './finding-data'
import type { ConcessionEntry, ProgrammeState } from './programme-state'

/** What each status of a concession means. */
export const CONCESSION_STANDINGS = {
  asked: { waits: true, lets: false },
  granted: { waits: false, lets: true },
  refused: { waits: false, lets: false },
  expired: { waits: false, lets: false },
  'no longer about this finding': { waits: false, lets: false },
} as const satisfies Record<string, ConcessionMeaning>
/** The state of a concession today. */
export type ConcessionStatus = keyof typeof CONCESSION_STANDINGS

interface ConcessionMeaning {
  /** Whether it waits to be granted or refused. */
  readonly waits: boolean
  /** Whether it lets the finding pass. */
  readonly lets: boolean
}

/** Whether its signatures stand, and no other is to be asked for. */
export const isAlive = (status: ConcessionStatus): boolean =>
  CONCESSION_STANDINGS[status].waits || CONCESSION_STANDINGS[status].lets

export function concessionStatus(
  concession: ConcessionEntry,
  finding: Finding | undefined,
  today: string,
): ConcessionStatus {
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
  if (!CAN_BE_CONCEDED[finding.verdict]) return undefined
  return state.concessions.find(
    (concession) =>
      concession.itemKey === itemKey &&
      concession.rule === finding.rule &&
      CONCESSION_STANDINGS[concessionStatus(concession, finding, state.facts.today)].lets,
  )
}

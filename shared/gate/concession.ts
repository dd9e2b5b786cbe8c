import type { Facts } from '@/shared/rules/facts'
import { canBeConceded, type Finding } from '@/shared/rules/finding'
import { boardsSolderedSince, isWithin, type DepartureBounds } from './deviation-permit'
import { concededData } from './conceded-data'
import type { ConcessionEntry, ProgrammeState } from './programme-state'

/** What each status of a concession or deviation permit means. */
export const CONCESSION_STANDINGS = {
  asked: { waits: true, lets: false },
  granted: { waits: false, lets: true },
  refused: { waits: false, lets: false },
  expired: { waits: false, lets: false },
  'used up': { waits: false, lets: false },
  'no longer about this finding': { waits: false, lets: false },
} as const satisfies Record<string, ConcessionMeaning>
/** The state of a concession today. */
export type ConcessionStatus = keyof typeof CONCESSION_STANDINGS

interface ConcessionMeaning {
  /** Whether it waits to be granted or refused. */
  readonly waits: boolean
  /** Whether it lets the finding pass; a permit only where the finding lies within its bounds. */
  readonly lets: boolean
}

/** One asked for before the fact: ISO 9000 calls it a deviation permit, and one after the fact a concession. */
export type DeviationPermit = ConcessionEntry & { readonly permit: DepartureBounds }

export const isPermit = (concession: ConcessionEntry): concession is DeviationPermit =>
  concession.permit !== null

/** "Deviation permit 3", "Concession 4": both are counted in one series. */
export const concessionName = (concession: Pick<ConcessionEntry, 'number' | 'permit'>): string =>
  `${concession.permit ? 'Deviation permit' : 'Concession'} ${concession.number}`

/** Whether its signatures stand, and no other is to be asked for. */
export const isAlive = (status: ConcessionStatus): boolean =>
  CONCESSION_STANDINGS[status].waits || CONCESSION_STANDINGS[status].lets

/** `finding` is the one that its rule finds today. A concession goes with that finding; a permit waits for one. */
export function concessionStatus(
  concession: ConcessionEntry,
  finding: Finding | undefined,
  facts: Facts,
): ConcessionStatus {
  if (concession.refused) return 'refused'
  if (!isPermit(concession) && (!finding || concededData(finding, facts) !== concession.findingData))
    return 'no longer about this finding'
  if (concession.untilOn !== null && concession.untilOn < facts.today) return 'expired'
  if (!concession.design || !concession.quality) return 'asked'
  return isUsedUp(concession, facts) ? 'used up' : 'granted'
}

/** The day at the works from which a permit holds: when the second of its two signatures was given. */
const grantedOn = ({ design, quality }: ConcessionEntry): string | undefined =>
  design && quality ? [design.on, quality.on].sort()[1] : undefined

/** How many boards a permit has been used for; undefined where it is not granted or not for a number. */
export function boardsUnder(concession: ConcessionEntry, { records }: Facts): number | undefined {
  const since = grantedOn(concession)
  return isPermit(concession) && concession.quantity !== null && since !== undefined
    ? boardsSolderedSince(records, since)
    : undefined
}

const isUsedUp = (concession: ConcessionEntry, facts: Facts): boolean =>
  concession.quantity !== null && (boardsUnder(concession, facts) ?? 0) > concession.quantity

/** The granted concession or permit that lets a finding pass, if there is one. */
export function concessionFor(
  finding: Finding,
  itemKey: string,
  state: ProgrammeState,
): ConcessionEntry | undefined {
  if (!canBeConceded(finding)) return undefined
  return state.concessions.find(
    (concession) =>
      concession.itemKey === itemKey &&
      concession.rule === finding.rule &&
      CONCESSION_STANDINGS[concessionStatus(concession, finding, state.facts)].lets &&
      (!isPermit(concession) || covers(concession, finding, state)),
  )
}

/** Whether a finding departs within what a permit allows. */
export function covers({ permit, itemKey, rule }: DeviationPermit, finding: Finding, state: ProgrammeState) {
  const item = state.items.find(({ definition }) => definition.key === itemKey)
  const judging = item?.definition.rules.find(({ id }) => id === rule)
  return judging !== undefined && isWithin(permit, finding, judging, state.facts)
}

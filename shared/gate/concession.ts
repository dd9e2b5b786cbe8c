import type { Finding } from '@/shared/rules/finding'
import { canonicalJson } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import type { ConcessionEntry, ProgrammeState } from './programme-state'

/** Identifies what a concession was asked for: another number found, or another part failing, is another finding. */
export const findingDigest = ({ rule, version, verdict, found, parts = [] }: Finding): string =>
  sha256(
    canonicalJson({
      rule,
      version,
      verdict,
      found,
      parts: parts.filter((part) => part.verdict === 'fails').map((part) => [part.subject, part.found]),
    }),
  )

/** The state of a concession today. */
export type ConcessionStanding = 'asked' | 'granted' | 'refused' | 'expired' | 'no longer about this finding'

export function concessionStanding(
  concession: ConcessionEntry,
  finding: Finding | undefined,
  today: string,
): ConcessionStanding {
  if (concession.refused) return 'refused'
  if (!finding || findingDigest(finding) !== concession.findingDigest) return 'no longer about this finding'
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

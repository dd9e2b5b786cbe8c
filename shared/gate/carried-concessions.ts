import type { Finding } from '@/shared/rules/finding'
import { canonicalJson } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import { findingData } from './finding-data'
import type { ConcessionEntry } from './programme-state'

/*
 * A concession was once asked for with a digest of the finding's sentences.
 * While the sentences read as they did then, what they speak of can be known and
 * noted as data; from there on the concession holds whatever the wording.
 */

/** The digest of a finding by its sentences, as it was once taken. */
export const sentencesDigest = ({ rule, version, verdict, found, parts = [] }: Finding): string =>
  sha256(
    canonicalJson({
      rule,
      version,
      verdict,
      found,
      parts: parts.filter((part) => part.verdict === 'fails').map((part) => [part.subject, part.found]),
    }),
  )

/** A concession with what its finding found, not known as data until now. */
export interface CarriedConcession {
  readonly concession: ConcessionEntry
  readonly findingData: string
}

/** Those that wait to be carried over, and whose finding stands today as they were asked for. */
export const carriedConcessions = (
  concessions: readonly ConcessionEntry[],
  findings: ReadonlyMap<string, Finding>,
): CarriedConcession[] =>
  concessions.flatMap((concession) => {
    const finding = findings.get(concession.rule)
    if (concession.findingData !== null || concession.permit || concession.refused || !finding) return []
    return sentencesDigest(finding) === concession.findingDigest
      ? [{ concession, findingData: findingData(finding) }]
      : []
  })

import type { Judged, Part } from '@/shared/rules/finding'
import { decidingPart } from '@/shared/rules/parts'

/** The part that speaks for a finding. Throws RangeError when there is none. */
export function worstPart(parts: readonly Part[]): Part {
  const worst = decidingPart(parts)
  if (!worst) throw new RangeError('A finding of parts needs at least one part.')
  return worst
}

/** What a finding of several parts says at its head: the worst part's words, margin and remedy. */
export function spokenByWorst(
  parts: readonly Part[],
): Pick<Judged, 'verdict' | 'found' | 'margin' | 'remedy' | 'missing' | 'parts'> {
  const worst = worstPart(parts)
  const open = parts.filter(({ verdict }) => verdict === 'undetermined')
  return {
    verdict: worst.verdict,
    found: `${worst.subject}: ${worst.found}`,
    ...(worst.margin && { margin: worst.margin }),
    ...(worst.remedy && { remedy: worst.remedy }),
    ...(open.length > 0 && { missing: open.map(({ subject, found }) => `${subject}: ${found}`) }),
    parts,
  }
}

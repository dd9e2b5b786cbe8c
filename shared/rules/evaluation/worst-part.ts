import { worstVerdict, type Judged, type Part } from '@/shared/rules/finding'

/** The part that speaks for a finding: the first of the worst. Parts must not be empty. */
export function worstPart(parts: readonly Part[]): Part {
  const verdict = worstVerdict(parts.map((part) => part.verdict))
  const worst = parts.find((part) => part.verdict === verdict)
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
    margin: worst.margin,
    remedy: worst.remedy,
    missing:
      worst.verdict === 'undetermined' ? open.map(({ subject, found }) => `${subject}: ${found}`) : undefined,
    parts,
  }
}

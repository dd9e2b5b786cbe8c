import { VERDICTS, worstVerdict, type Judged, type Part } from '@/shared/rules/finding'

/**
 * A finding joined by parts judged beside its main question. The worst of them
 * speaks for the whole when it is worse than the main question.
 */
export function withFurtherParts<J extends Omit<Judged, 'working' | 'sources'>>(
  judged: J,
  what: string,
  further: readonly Part[],
): J {
  const verdict = worstVerdict([judged.verdict, ...further.map((part) => part.verdict)])
  const parts = [...(judged.parts ?? []), ...further]
  if (VERDICTS.indexOf(verdict) === VERDICTS.indexOf(judged.verdict)) return { ...judged, parts }
  const worst = further.find((part) => part.verdict === verdict)!
  return {
    ...judged,
    verdict,
    found: `${what}: ${worst.found}`,
    margin: worst.margin,
    remedy: worst.remedy,
    missing: verdict === 'undetermined' ? [worst.subject] : undefined,
    parts,
  }
}

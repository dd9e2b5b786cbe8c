import type { Judged, Part } from '@/shared/rules/finding'
import { decidingPart } from '@/shared/rules/parts'

/**
 * A finding joined by parts judged beside its main question. Where one of them
 * decides (worst verdict, then least room), it speaks for the whole.
 */
export function withFurtherParts<J extends Omit<Judged, 'working' | 'sources'>>(
  judged: J,
  what: string,
  further: readonly Part[],
): J {
  const main = judged.parts ?? [{ subject: '', ...judged }]
  const parts = [...(judged.parts ?? []), ...further]
  const deciding = decidingPart([...main, ...further])
  const unclear = further.filter(({ verdict }) => verdict === 'undetermined').map(({ subject }) => subject)
  const missing = [...(judged.missing ?? []), ...unclear]
  const joined = { ...judged, parts, ...(missing.length > 0 && { missing }) }
  if (!deciding || !further.includes(deciding)) return joined
  return {
    ...joined,
    verdict: deciding.verdict,
    found: `${what}: ${deciding.found}`,
    margin: deciding.margin,
    remedy: deciding.remedy,
  }
}

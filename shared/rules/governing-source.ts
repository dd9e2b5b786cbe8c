import type { GoverningRequirement } from '@/shared/plan/requirement'
import type { Source } from '@/shared/sources/source'

/** The source behind a requirement: the default's own, or the programme's document that rules. */
export function sourceOf(governing: GoverningRequirement): Source {
  return governing.kind === 'default'
    ? governing.limit.byDefault.from
    : { cite: governing.document, how: 'published' }
}

/** What a requirement asks, for the limit line of a finding: the document, and that it is looser than the default. */
export const governingName = (governing: GoverningRequirement): string =>
  governing.relaxed ? `${governing.document}; looser than the default` : governing.document

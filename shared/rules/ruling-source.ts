import type { Ruling } from '@/shared/plan/requirement'
import type { Source } from '@/shared/sources/source'

/** The source behind a ruling: the default's own, or the programme's document that rules. */
export function sourceOf(ruling: Ruling): Source {
  return ruling.kind === 'default' ? ruling.limit.byDefault.from : { cite: ruling.document, how: 'published' }
}

/** What a ruling asks, for the limit line of a finding: the document, and that it is looser than the default. */
export const namedRuling = (ruling: Ruling): string =>
  ruling.relaxed ? `${ruling.document}; looser than the default` : ruling.document

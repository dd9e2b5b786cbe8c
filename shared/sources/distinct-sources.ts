import type { Source } from './source'

/** Each source once: several limits of a rule often come from one document. */
export const distinctSources = (sources: readonly Source[]): Source[] => [
  ...new Map(sources.map((source) => [source.cite, source])).values(),
]

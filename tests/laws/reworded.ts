import type { Finding, Part, Remedy } from '@/shared/rules/finding'

/** Another wording of the same sentence. */
const other = (text: string): string => `Otherwise put: ${[...text].reverse().join('')}`

const otherRemedy = (remedy: Remedy): Remedy => ({ ...remedy, message: other(remedy.message) })

/** A subject that is data keeps its words: they are those of people. */
const otherPart = (part: Part): Part => ({
  ...part,
  subject: part.about ? other(part.subject) : part.subject,
  found: other(part.found),
  ...(part.remedy && { remedy: otherRemedy(part.remedy) }),
})

/** The same finding with every sentence of it worded otherwise. */
export const reworded = (finding: Finding): Finding => ({
  ...finding,
  found: other(finding.found),
  limit: other(finding.limit),
  working: finding.working.map((line) => ({ label: other(line.label), result: other(line.result) })),
  sources: finding.sources.map((source) => ({ ...source, cite: other(source.cite) })),
  ...(finding.remedy && { remedy: otherRemedy(finding.remedy) }),
  ...(finding.missing && { missing: finding.missing.map(other) }),
  ...(finding.parts && { parts: finding.parts.map(otherPart) }),
  ...(finding.notes && { notes: finding.notes.map(other) }),
  ...(finding.cautions && { cautions: finding.cautions.map(other) }),
})

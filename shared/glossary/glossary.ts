import { TERMS_OF_EVIDENCE } from './terms-of-evidence'
import { TERMS_OF_PLANNING } from './terms-of-planning'
import { TERMS_OF_THE_BOARD } from './terms-of-the-board'
import type { Term } from './term'

/** Terms of one subject, under its heading. */
export interface GlossarySection {
  readonly key: string
  readonly heading: string
  readonly terms: readonly Term[]
}

/** Every term, by subject. */
export const GLOSSARY: readonly GlossarySection[] = [
  { key: 'planning', heading: 'Planning, deciding, signing', terms: TERMS_OF_PLANNING },
  { key: 'evidence', heading: 'Lots, tests, readings, proof', terms: TERMS_OF_EVIDENCE },
  { key: 'board', heading: 'The board, its joints, service and cost', terms: TERMS_OF_THE_BOARD },
]

/** Names the row of a term, for links to it. */
export const termId = ({ term }: Term): string => term.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')

/** Where a word comes from, in words. */
export const originOf = ({ from }: Term): string =>
  from.kind === 'standard' ? from.cite : from.kind === 'trade' ? 'usual in the trade' : 'this project’s own'

export const ORIGINS_NOTE =
  'Each word is the one a standard or the trade uses, where there is one. Editions and clauses are given from memory: look them up before relying on them.'

/** The glossary as a Markdown document. */
export const glossaryDocument = (): string =>
  ['# Glossary', '', ORIGINS_NOTE, '', ...GLOSSARY.flatMap(sectionLines)].join('\n')

const sectionLines = ({ heading, terms }: GlossarySection): string[] => [
  `## ${heading}`,
  '',
  ...terms.map(
    (term) =>
      `- **${term.term}** – ${term.meaning} _(${originOf(term)})_${term.insteadOf ? ` Not: ${term.insteadOf.join(', ')}.` : ''}`,
  ),
  '',
]

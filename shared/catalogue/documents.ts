import type { ItemDefinition } from './item'
import { applicableDocuments } from '@/shared/plan/parameters/documents'
import type { Limit } from '@/shared/plan/requirement'
import { documentConflictsOver } from '@/shared/rules/specification/document-conflicts'

/** The register of documents, judged over every limit that documents may set. */
export const documentsItem = (limits: readonly Limit[]): ItemDefinition => ({
  key: 'documents',
  stage: 'specification',
  title: 'Applicable documents',
  asks: 'Which documents, in which edition, is the board made to, and which of them rules where they differ?',
  version: 1,
  owner: 'quality',
  approvers: ['design', 'production', 'quality'],
  parameters: [applicableDocuments],
  limits: [],
  rules: [documentConflictsOver(limits)],
  evidence: [],
  cautions: [],
})

import { describe, expect, test } from 'vitest'
import { radialClearanceMin, radialClearanceMax } from '@/shared/plan/limits/lead-holes'
import { applicableDocuments, type ApplicableDocument } from '@/shared/plan/parameters/documents'
import { documentConflictsOver } from '@/shared/rules/specification/document-conflicts'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'

const documentConflicts = documentConflictsOver([radialClearanceMin, radialClearanceMax])
const contract: ApplicableDocument = {
  document: 'CS-100',
  edition: 'issue 2',
  authority: 'customer',
  governs: 'everything',
  note: undefined,
}
const judged = (rows: readonly ApplicableDocument[], requirements: FactsInput['requirements'] = []) =>
  findingOf(documentConflicts, { values: [set(applicableDocuments, rows)], requirements })

describe('documents and their precedence', () => {
  test('a register without disputes meets', () => {
    expect(judged([contract]).verdict).toBe('meets')
  })
  test('a stricter requirement of a registered document is no dispute', () => {
    expect(judged([contract], [requirement(radialClearanceMin, 0.15)]).verdict).toBe('meets')
  })
  test('a requirement of a document that is not registered fails', () => {
    const finding = judged([contract], [requirement(radialClearanceMin, 0.15, { document: 'QP-7' })])
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toContain('Add QP-7')
    const registered = { ...contract, document: 'QP-7', edition: '1' }
    expect(
      judged([contract, registered], [requirement(radialClearanceMin, 0.15, { document: 'QP-7' })]).verdict,
    ).toBe('meets')
  })
  test('the lessons that an installation keeps itself need no place in the register', () => {
    const lesson = requirement(radialClearanceMin, 0.15, {
      document: 'Lessons learnt',
      authority: 'company',
      lesson: { programme: 'LX-41', number: 1 },
    })
    expect(judged([contract], [lesson]).verdict).toBe('meets')
  })
  test('nor does a company rule that was taken over, which names its edition itself', () => {
    const rule = { document: 'Handbook, edition 5', authority: 'company' as const }
    const taken = requirement(radialClearanceMin, 0.15, { ...rule, companyRule: 'the rule' })
    expect(judged([contract], [taken]).verdict).toBe('meets')
    expect(judged([contract], [requirement(radialClearanceMin, 0.15, rule)]).verdict).toBe('fails')
  })
  test.each(['Lessons learnt', radialClearanceMin.byDefault.from.cite])(
    'a document that is only called “%s” has to be registered like any other',
    (document) => {
      const stated = requirement(radialClearanceMin, 0.15, { document, authority: 'company' })
      expect(judged([contract], [stated]).verdict).toBe('fails')
    },
  )
  test('two documents of one authority that disagree are shown with both values and the one that rules', () => {
    const finding = judged(
      [contract, { ...contract, document: 'CS-200' }],
      [
        requirement(radialClearanceMin, 0.15),
        requirement(radialClearanceMin, 0.12, { document: 'CS-200', id: 'second' }),
      ],
    )
    expect(finding.verdict).toBe('marginal')
    expect(finding.found).toContain('0.15 mm (CS-100 issue 2)')
    expect(finding.found).toContain('0.12 mm (CS-200)')
    expect(finding.found).toContain('0.15 mm of CS-100 issue 2 rules')
  })
  test('a relaxed limit is shown as such', () => {
    const finding = judged([contract], [requirement(radialClearanceMin, 0.05, { relaxes: true })])
    expect(finding.verdict).toBe('marginal')
    expect(finding.found).toContain('is relaxed to 0.05 mm')
  })
  test('one document in two editions fails', () => {
    expect(judged([contract, { ...contract, edition: 'issue 3' }]).verdict).toBe('fails')
  })
  test('several documents on one subject are told', () => {
    const finding = judged([contract, { ...contract, document: 'CS-200' }])
    expect(finding.notes?.[0]).toContain('CS-100 (issue 2), CS-200 (issue 2)')
  })
})

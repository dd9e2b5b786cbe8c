import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  consumersRiskInWords,
  outgoingInWords,
  producersRiskInWords,
  proofOfAcceptance,
  whyAnotherKind,
} from '@/app/programmes/[code]/sampling/plan-in-words'
import { questionFrom, USUAL_SETTINGS } from '@/app/programmes/[code]/sampling/plan-question'
import { planForLot } from '@/shared/sampling/sampling-plan'

const asked = (given: Record<string, string>) => {
  const { question } = questionFrom(given, USUAL_SETTINGS, '.')
  if (!question) throw new Error('It could not be planned.')
  return {
    question,
    plan: planForLot(question.lotSize, question.severity, question.settings, { measured: true }),
  }
}

describe('a planned sample in words', () => {
  // Lot 150, level II: letter F; at AQL 1.0 the arrow leads to 13 pieces, none nonconforming (MIL-STD-105E
  // tables I and II-A). Consumer: 1 − 0.1^(1/13) = 16.2 %, in table VI-A printed as 16 (from memory);
  // producer: 1 − 0.99^13 = 12.2 %; outgoing: the summit of p(1 − p)^13 · 137/150 = 2.49 % at 1/14.
  test('tells both risks and the outgoing quality of 13 pieces, none nonconforming', () => {
    const { question, plan } = asked({ lot: '150', level: 'II', aql: '1.0' })
    expect(plan).toMatchObject({ kind: 'single', sampleSize: 13, accept: 0 })
    expect(consumersRiskInWords(plan)).toContain('16.2 %')
    expect(producersRiskInWords(plan, question)).toContain('12.2 %')
    expect(outgoingInWords(plan, question)).toContain('2.49 %')
  })

  // By counting: a sample of all but one of a lot, none nonconforming, leaves at most that one.
  test('what an accepted lot is shown to be is exact for the lot', () => {
    const { question, plan } = asked({ lot: '20', type: 'zero-acceptance', share: '5', confidence: '90' })
    expect(plan).toMatchObject({ sampleSize: 18 })
    expect(proofOfAcceptance(plan, question, 0.9)).toContain('at most 0 of the 20')
  })

  test('works out what leaves for double and variables plans too', () => {
    for (const type of ['double', 'variables']) {
      const { question, plan } = asked({ lot: '1000', level: 'II', aql: '1.0', type })
      expect(plan.kind).toBe(type)
      expect(outgoingInWords(plan, question)).toMatch(/^At worst [\d.]+ % on average/)
    }
  })

  test('says when the tables have no plan of the kind asked for', () => {
    const { question, plan } = asked({ lot: '20', type: 'double' })
    expect(plan.kind).toBe('single')
    expect(whyAnotherKind(plan, question)).toContain('single plan')
  })
})

describe('what stands in the address', () => {
  test.each([
    [{ lot: '0' }, 'lot'],
    [{ lot: '12.5' }, 'lot'],
    [{ lot: 'many' }, 'lot'],
    [{ share: '0' }, 'share'],
    [{ confidence: '100' }, 'confidence'],
  ])('%j is told at its field', (given, field) => {
    expect(questionFrom(given, USUAL_SETTINGS, '.').problems).toHaveProperty(field)
  })

  test('whatever it is, it is planned or explained, and never thrown at', () => {
    const text = fc.oneof(
      fc.string(),
      fc.constantFrom('1', '2', '150', '1000000', 'S-1', 'III', '0.10', '10'),
    )
    const given = fc.record({
      lot: text,
      level: text,
      aql: text,
      state: fc.oneof(text, fc.constantFrom('tightened', 'reduced')),
      type: fc.oneof(text, fc.constantFrom('double', 'zero-acceptance', 'variables')),
      share: text,
      confidence: text,
    })
    fc.assert(
      fc.property(given, (one) => {
        const { question, problems } = questionFrom(one, USUAL_SETTINGS, '.')
        if (!question) {
          expect(Object.values(problems).join('')).not.toBe('')
          return
        }
        const plan = planForLot(question.lotSize, question.severity, question.settings, { measured: true })
        expect(consumersRiskInWords(plan)).not.toMatch(/NaN|not a number/)
        expect(producersRiskInWords(plan, question)).not.toMatch(/NaN|not a number/)
      }),
    )
  })
})

import { describe, expect, test } from 'vitest'
import { blamedBy, verdictOfLot, type LotPart } from '@/app/programmes/[code]/lots/lot-parts'
import type { Verdict } from '@/shared/rules/finding'

const part = (rule: string, verdict: Verdict, over: Partial<LotPart['part']> = {}): LotPart => ({
  rule,
  title: rule,
  part: { subject: 'lot B-01', about: { lot: 'B-01' }, verdict, found: 'so', ...over },
})
const margin = { found: 200, limit: 180, unit: 'days', direction: 'at most', guardBand: 5 } as const

describe('what a failing finding on a lot blames', () => {
  test('a plan that lets much through is no verdict on the lot', () => {
    const risk = part('sampling-plan-risk', 'fails')
    expect(blamedBy(risk)).toBe('plan')
    expect(verdictOfLot([risk])).toBeUndefined()
    expect(verdictOfLot([risk, part('rotary-dip-wetting-time', 'meets')])).toBe('meets')
  })
  test('a test under other conditions, an old one, a warm store show nothing of the lot yet', () => {
    expect(verdictOfLot([part('test-conditions-alike', 'fails')])).toBe('undetermined')
    expect(verdictOfLot([part('result-still-fresh', 'fails', { margin })])).toBe('undetermined')
    expect(verdictOfLot([part('store-climate', 'fails')])).toBe('undetermined')
  })
  test('a sample that fails does', () => {
    expect(verdictOfLot([part('rotary-dip-wetting-time', 'fails')])).toBe('fails')
    expect(verdictOfLot([part('result-still-fresh', 'fails')])).toBe('fails')
  })
})

import { describe, expect, test } from 'vitest'
import type { InspectedLot, SeriesEvent } from '@/shared/statistics/sampling/switching'
import { inspectionAfter } from '@/shared/statistics/sampling/switching'
import { ISO_2859_1, MIL_STD_105D } from '@/shared/statistics/sampling/switching-rules'

const good: InspectedLot = { kind: 'lot', outcome: 'accepted' }
const nonconforming: InspectedLot = { kind: 'lot', outcome: 'rejected' }
const steady: InspectedLot = { ...good, mayReduce: true }
const gap: InspectedLot = { kind: 'lot', outcome: 'accepted in the gap' }
const correction: SeriesEvent = { kind: 'corrective action accepted' }
const times = <T>(count: number, lot: T): T[] => Array.from({ length: count }, () => lot)
const severityAfter = (...history: SeriesEvent[]) => inspectionAfter(history).severity

// MIL-STD-105E 4.7 and 4.8 (read in a reproduction); one test a rule.
describe('MIL-STD-105E', () => {
  test('a series starts normal', () => {
    expect(inspectionAfter([])).toMatchObject({
      severity: 'normal',
      because: 'A series starts on normal inspection.',
    })
  })

  describe('normal to tightened: two of five or fewer rejected', () => {
    test('two in a row are enough', () => {
      expect(severityAfter(nonconforming)).toBe('normal')
      expect(severityAfter(nonconforming, nonconforming)).toBe('tightened')
    })
    test('two with three between are within five', () => {
      expect(severityAfter(nonconforming, good, good, good, nonconforming)).toBe('tightened')
    })
    test('two with four between are not', () => {
      expect(severityAfter(nonconforming, good, good, good, good, nonconforming)).toBe('normal')
    })
    test('a lot offered again does not count', () => {
      expect(severityAfter(nonconforming, { ...nonconforming, resubmitted: true })).toBe('normal')
    })
    test('rejections before a return to normal do not count again', () => {
      expect(severityAfter(nonconforming, nonconforming, ...times(5, good), nonconforming)).toBe('normal')
    })
  })

  describe('tightened to normal: five in a row accepted', () => {
    const tightened = [nonconforming, nonconforming]
    test('four are not enough, five are', () => {
      expect(severityAfter(...tightened, ...times(4, good))).toBe('tightened')
      expect(severityAfter(...tightened, ...times(5, good))).toBe('normal')
    })
    test('a rejection starts the count again', () => {
      expect(severityAfter(...tightened, ...times(4, good), nonconforming, ...times(4, good))).toBe(
        'tightened',
      )
    })
  })

  describe('tightened to discontinued: five rejected while on tightened', () => {
    const tightened = [nonconforming, nonconforming]
    test('in a row or with accepted lots between', () => {
      expect(severityAfter(...tightened, ...times(4, nonconforming))).toBe('tightened')
      expect(severityAfter(...tightened, ...times(5, nonconforming))).toBe('discontinued')
      expect(severityAfter(...tightened, ...times(5, [good, good, nonconforming]).flat())).toBe(
        'discontinued',
      )
    })
    test('lots change nothing until the supplier has acted; then it resumes tightened', () => {
      const discontinued = [...tightened, ...times(5, nonconforming)]
      expect(severityAfter(...discontinued, ...times(20, good))).toBe('discontinued')
      expect(severityAfter(...discontinued, correction)).toBe('tightened')
      expect(severityAfter(...discontinued, correction, ...times(5, good))).toBe('normal')
    })
    test('an action accepted while inspection runs changes nothing', () => {
      expect(severityAfter(nonconforming, correction, nonconforming)).toBe('tightened')
    })
  })

  describe('normal to reduced: ten accepted and the other conditions', () => {
    test('nine are not enough, ten are', () => {
      expect(severityAfter(...times(9, steady))).toBe('normal')
      expect(severityAfter(...times(10, steady))).toBe('reduced')
    })
    test('a rejection among the ten puts it off', () => {
      expect(severityAfter(...times(5, steady), nonconforming, ...times(9, steady))).toBe('normal')
      expect(severityAfter(...times(5, steady), nonconforming, ...times(10, steady))).toBe('reduced')
    })
    test('it is never taken unless the conditions are said to hold', () => {
      expect(severityAfter(...times(30, good))).toBe('normal')
      expect(severityAfter(...times(30, good), steady)).toBe('reduced')
      expect(severityAfter(...times(30, good), { ...steady, irregular: true })).toBe('normal')
    })
  })

  describe('reduced to normal', () => {
    const reduced = times(10, steady)
    test('a rejected lot', () => {
      expect(severityAfter(...reduced, nonconforming)).toBe('normal')
    })
    test('a lot in the gap is accepted, and the next is normal', () => {
      const { severity, because } = inspectionAfter([...reduced, gap])
      expect(severity).toBe('normal')
      expect(because).toContain('between the acceptance and rejection numbers')
    })
    test('irregular production', () => {
      expect(severityAfter(...reduced, { ...good, irregular: true })).toBe('normal')
    })
    test('accepted lots stay reduced', () => {
      expect(severityAfter(...reduced, ...times(50, good))).toBe('reduced')
    })
    test('the count to reduced starts anew', () => {
      expect(severityAfter(...reduced, gap, ...times(9, steady))).toBe('normal')
      expect(severityAfter(...reduced, gap, ...times(10, steady))).toBe('reduced')
    })
  })
})

// MIL-STD-105D (from memory): ten consecutive lots on tightened inspection end it.
describe('MIL-STD-105D', () => {
  test('ten lots on tightened discontinue, five accepted at the end return to normal instead', () => {
    const tightened = [nonconforming, nonconforming]
    const mixed = times(3, [good, good, nonconforming]).flat()
    expect(inspectionAfter([...tightened, ...mixed], MIL_STD_105D).severity).toBe('tightened')
    expect(inspectionAfter([...tightened, ...mixed, good], MIL_STD_105D).severity).toBe('discontinued')
    const recovering = [...tightened, ...times(5, nonconforming), ...times(5, good)]
    expect(inspectionAfter(recovering, MIL_STD_105D).severity).toBe('normal')
  })
})

// ISO 2859-1:1999, 9.3.3 (from memory): the switching score.
describe('ISO 2859-1', () => {
  const scored = (lot: Partial<InspectedLot>): InspectedLot => ({ ...steady, ...lot })
  test('ten lots that would pass one step tighter earn three each', () => {
    const lot = scored({ acceptanceNumber: 2, passesOneStepTighter: true })
    expect(inspectionAfter(times(9, lot), ISO_2859_1)).toMatchObject({
      severity: 'normal',
      switchingScore: 27,
    })
    expect(inspectionAfter(times(10, lot), ISO_2859_1).severity).toBe('reduced')
  })
  test('a double plan earns 3 on its first sample whatever its acceptance number, and nothing on the second', () => {
    const first = scored({ acceptedOnFirst: true })
    expect(inspectionAfter(times(9, first), ISO_2859_1)).toMatchObject({
      severity: 'normal',
      switchingScore: 27,
    })
    expect(inspectionAfter(times(10, first), ISO_2859_1).severity).toBe('reduced')
    const second = scored({ acceptedOnFirst: false })
    expect(inspectionAfter([...times(9, first), second], ISO_2859_1).switchingScore).toBe(0)
  })
  test('a lot that would not pass one step tighter sets the score back to nothing', () => {
    const lot = scored({ acceptanceNumber: 2, passesOneStepTighter: true })
    const weak = scored({ acceptanceNumber: 2, passesOneStepTighter: false })
    expect(inspectionAfter([...times(9, lot), weak], ISO_2859_1).switchingScore).toBe(0)
  })
  test('plans that accept none or one earn two a lot: fifteen lots', () => {
    const lot = scored({ acceptanceNumber: 1 })
    expect(inspectionAfter(times(14, lot), ISO_2859_1).severity).toBe('normal')
    expect(inspectionAfter(times(15, lot), ISO_2859_1).severity).toBe('reduced')
    expect(
      inspectionAfter([...times(14, lot), { ...lot, outcome: 'rejected' }], ISO_2859_1).switchingScore,
    ).toBe(0)
  })
})

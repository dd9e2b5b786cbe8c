import { describe, expect, test } from 'vitest'
import { boardFinish, boardFinishMin } from '@/shared/plan/parameters/finishes'
import type { Lot } from '@/shared/records/lot'
import { lotsDispositioned } from '@/shared/rules/evaluation/lots-dispositioned'
import { findingOf, set } from '../facts-builder'
import {
  accepted,
  boardConditions,
  boardPlan,
  lot,
  rejected,
  rotaryDip,
  testOf,
  timer,
  times,
} from '../lots-builder'

const findingWith = (...lots: Lot[]) =>
  findingOf(lotsDispositioned, {
    values: [...boardPlan, set(boardFinish, 'tin-lead-plated'), set(boardFinishMin, 5)],
    instruments: [timer],
    lots,
  })
const concession = {
  ...accepted,
  verdict: 'use under concession',
  reason: 'For hand-soldered spares.',
} as const
const slow = [rotaryDip([...times(12, 1), 3])]
const good = [rotaryDip(times(13, 1))]

describe('a disposition', () => {
  test.each([
    ['accepted on a good sample', lot({ tests: good, disposition: accepted }), 'meets'],
    ['rejected', lot({ tests: slow, disposition: rejected }), 'meets'],
    ['under concession', lot({ tests: slow, disposition: concession }), 'marginal'],
    ['none', lot({ tests: good }), 'undetermined'],
    ['accepted against the plan’s rejection', lot({ tests: slow, disposition: accepted }), 'fails'],
    [
      'accepted on half a sample',
      lot({ tests: [rotaryDip(times(6, 1))], disposition: accepted }),
      'undetermined',
    ],
    ['accepted untested', lot({ disposition: accepted }), 'undetermined'],
  ])('%s', (_, one, verdict) => {
    expect(findingWith(one).verdict).toBe(verdict)
  })
  test('a result under other conditions speaks neither for nor against', () => {
    const tests = [rotaryDip(times(13, 9), { conditions: { ...boardConditions, flux: 'process-flux' } })]
    expect(findingWith(lot({ tests, disposition: accepted })).verdict).toBe('undetermined')
  })
  test('thin plating speaks against acceptance', () => {
    const rows = [3, 3.2, 2.8].map((thicknessUm, at) => ({ specimen: `s${at}`, place: 'track', thicknessUm }))
    const thin = testOf('plating-thickness', rows, {
      conditions: { deposit: 'tin-lead', technique: 'x-ray' },
    })
    expect(findingWith(lot({ tests: [thin], disposition: accepted })).found).toContain(
      'thickness of tin-lead',
    )
  })
  test('a failed lot that nobody disposed of is named as such', () => {
    expect(findingWith(lot({ tests: slow })).found).toContain(
      'failed by rotary dip, and is not yet disposed of',
    )
  })
  test('no lot, nothing to judge', () => {
    expect(findingWith().verdict).toBe('undetermined')
  })
})

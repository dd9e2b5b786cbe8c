import { describe, expect, test } from 'vitest'
import {
  boardQuality,
  defectFreeBoards,
  failureRateEdition,
  survivalTarget,
  surfaceMountJoints,
} from '@/shared/plan/parameters/joint-budget'
import { copperLayers } from '@/shared/plan/parameters/laminate'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { environment, serviceYears } from '@/shared/plan/parameters/programme'
import { jointBudget } from '@/shared/rules/specification/joint-budget'
import { findingOf, set, type SetValue } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

const machineAndHand = [
  leadHole({ component: 'All ICs', joints: 1000 }),
  leadHole({ component: 'T1', joints: 20, soldered: 'hand' }),
]
const board = (rows = machineAndHand, ...more: SetValue[]) => ({
  values: [
    set(leadHoles, rows),
    set(serviceYears, 20),
    set(survivalTarget, 98),
    set(defectFreeBoards, 99),
    set(environment, 'GF'),
    set(copperLayers, 4),
    set(boardQuality, 'qualified'),
    set(surfaceMountJoints, 0),
    ...more,
  ],
})

describe('joint budget', () => {
  // MIL-HDBK-217F Notice 2, section 16.1, worked by hand: 1000 automated and 20 hand holes, 4 planes,
  // ground fixed: 62.827 FIT and a survival of 0.98905 over 20 years.
  test('predicts 62.83 FIT a board by Notice 2', () => {
    const finding = findingOf(jointBudget, board(machineAndHand, set(failureRateEdition, 'notice-2')))
    expect(finding.margin?.found).toBeCloseTo(62.82712991903978, 9)
    expect(finding.found).toContain('98.905 %')
    expect(finding.found).toContain('MIL-HDBK-217F section 16.1, Notice 2, 1995')
    expect(finding.verdict).toBe('meets')
  })
  // The base issue of 1991 gives 151.52 FIT for the same board.
  test('without an edition the higher prediction decides', () => {
    const finding = findingOf(jointBudget, board())
    expect(finding.margin?.found).toBeCloseTo(151.52425451062538, 9)
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toContain('fewer joints by hand')
  })
  // 99 % of 500-joint boards without a defect: 20.1 per million; survival 0.99: 0.1147 FIT a joint.
  test('says what each joint is allowed', () => {
    const finding = findingOf(
      jointBudget,
      board([leadHole({ joints: 500 })], set(survivalTarget, 99), set(failureRateEdition, 'notice-2')),
    )
    expect(finding.found).toContain('0.115 FIT a joint')
    expect(finding.found).toContain('20.1 per million defective joints')
  })
  test('counts surface-mount joints by section 17.1, with its model named', () => {
    // 500 reflow joints in GF: 69 FIT (sec. 17.1 by hand).
    const rows = [leadHole({ joints: 1 })]
    const without = findingOf(jointBudget, board(rows, set(failureRateEdition, 'notice-2')))
    const finding = findingOf(
      jointBudget,
      board(rows, set(failureRateEdition, 'notice-2'), set(surfaceMountJoints, 500)),
    )
    expect(finding.margin!.found - without.margin!.found).toBeCloseTo(69, 9)
    expect(finding.found).toContain('section 17.1')
  })
  // MIL-HDBK-217F section 17.1: reflow solder 0.000069, hand solder without wrapping 0.0013 (Notice 2) failures
  // in 10⁶ h; ground fixed: twice. 100 joints by hand in unplated holes: 260 FIT, by machine 13.8 FIT.
  test.each([
    ['machine', 13.8],
    ['hand', 260],
  ] as const)('100 unplated joints by %s: %s FIT', (soldered, fit) => {
    const rows = [leadHole({ joints: 100, plated: false, soldered })]
    const finding = findingOf(jointBudget, board(rows, set(failureRateEdition, 'notice-2')))
    expect(finding.margin?.found).toBeCloseTo(fit, 9)
  })
  test('without word of surface-mount joints their number is not taken as none', () => {
    const { values } = board()
    const finding = findingOf(jointBudget, {
      values: values.filter(([key]) => key !== surfaceMountJoints.key),
    })
    expect(finding).toMatchObject({ verdict: 'undetermined', missing: [surfaceMountJoints.label] })
  })
  test('more than 18 layers lie outside the model and are not judged', () => {
    const finding = findingOf(jointBudget, board(machineAndHand, set(copperLayers, 20)))
    expect(finding.verdict).toBe('undetermined')
  })
  test('says that a prediction is no proof', () => {
    expect(findingOf(jointBudget, board()).cautions?.join(' ')).toContain('no proof')
  })
})

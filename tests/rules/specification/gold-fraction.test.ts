import { describe, expect, test } from 'vitest'
import { goldMassFraction, goldMassMg, goldThicknessAtUm } from '@/shared/physics/gold-fraction'
import { annulusMm3, jointSolderMm3, quarterCircleFilletMm3 } from '@/shared/physics/joint-volume'
import { boardFinish, boardFinishMin, leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import { contactAngle } from '@/shared/plan/parameters/joint-geometry'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { goldFraction } from '@/shared/rules/specification/gold-fraction'
import { findingOf, set, type SetValue } from '../facts-builder'
import { leadFinish } from './finish-rows'
import { leadHole } from './lead-hole-rows'

describe('gold by mass', () => {
  // Computed: 1 mm² of gold and 0.0625 mm³ of solder at 8.5 g/cm³.
  test.each([
    [0.1, 0.362],
    [1.27, 4.41],
  ])('%s µm of gold on a pad gives %s %%', (thicknessUm, percent) => {
    const gold = goldMassMg([{ areaMm2: 1, thicknessUm }])
    expect(goldMassFraction(gold, 0.0625, 8.5) * 100).toBeCloseTo(percent, 2)
  })
  test('3 % is reached at 0.851 µm', () => {
    expect(goldThicknessAtUm(0.03, 0.0625, 1, 8.5)).toBeCloseTo(0.851, 3)
  })
  test('a joint without solder is refused', () => {
    expect(() => goldMassFraction(1, 0, 8.5)).toThrow(RangeError)
  })
})

describe('solder of a through-hole joint', () => {
  // Pin-in-paste volumes: land 1.8, hole 1.1, pin 0.8, board 1.6 mm: fillet 0.1728, annulus 0.7163,
  // both fillets and hole 1.0619 mm³ (formula published with rounded constants, 0.2 % high; numbers computed).
  const joint = { landMm: 1.8, holeMm: 1.1, boardMm: 1.6, lead: { shape: 'round', widthMm: 0.8 } } as const
  test('annulus, fillet and whole', () => {
    expect(annulusMm3(joint)).toBeCloseTo(0.71628, 5)
    expect(quarterCircleFilletMm3(joint) / 0.17281).toBeCloseTo(1, 2)
    expect(Math.abs(jointSolderMm3(joint) / 1.06191 - 1)).toBeLessThan(0.002)
  })
  // Land 2.0, hole 1.3, pin 1.0: fillet 0.2066, annulus 0.8671.
  test('a second published size', () => {
    const other = { landMm: 2, holeMm: 1.3, boardMm: 1.6, lead: { shape: 'round', widthMm: 1 } } as const
    expect(annulusMm3(other)).toBeCloseTo(0.8671, 4)
    expect(Math.abs(quarterCircleFilletMm3(other) / 0.2066 - 1)).toBeLessThan(0.003)
  })
  test('a lead that fills its hole leaves no room', () => {
    expect(() => annulusMm3({ ...joint, holeMm: 0.8 })).toThrow(RangeError)
  })
})

describe('gold in each joint', () => {
  // Computed example: 2.54 µm of gold on a 0.5 mm lead in a 0.8 mm hole of a 1.6 mm board, fillets left
  // out: 2.873 % at 8.5 g/cm³ (Sn60Pb40), 3.294 % at 7.38 (Sn96.5Ag3Cu0.5).
  const row = leadHole({ leadMm: 0.5, leadToleranceMm: 0, holeMm: 0.8, holeToleranceMm: 0 })
  const goldLead = leadFinish({ coating: 'gold', coatingUm: 2.54, coatingMostUm: 2.54 })
  const judged = (alloy: 'sn60pb40' | 'sac305', finish: LeadFinish, holes = [row], ...more: SetValue[]) =>
    findingOf(goldFraction, {
      values: [
        set(leadHoles, holes),
        set(barrelPlating, 25),
        set(boardThickness, 1.6),
        set(solderAlloy, alloy),
        set(boardFinish, 'tin-plated'),
        set(boardFinishMin, 5),
        set(leadFinishes, [finish]),
        ...more,
      ],
    })
  test('is 2.873 % in tin-lead, inside but close', () => {
    const finding = judged('sn60pb40', goldLead)
    expect(finding.margin?.found).toBeCloseTo(2.873, 3)
    expect(finding.verdict).toBe('marginal')
  })
  test('is 3.294 % in lead-free, and fails', () => {
    const finding = judged('sac305', goldLead)
    expect(finding.margin?.found).toBeCloseTo(3.294, 3)
    expect(finding.verdict).toBe('fails')
  })
  test('the thickness of the remedy meets', () => {
    const { remedy } = judged('sac305', goldLead)
    const message = Number(/to ([\d.]+) µm/.exec(remedy?.message ?? '')?.[1])
    expect(judged('sac305', { ...goldLead, coatingMostUm: message }).verdict).toBe('meets')
  })
  test('gold removed leaves none', () => {
    expect(judged('sac305', { ...goldLead, goldRemoved: true }).verdict).toBe('not applicable')
  })
  test('an order that sets no most of gold shows nothing while its least would pass', () => {
    const open = { ...goldLead, coatingMostUm: undefined }
    expect(judged('sn60pb40', { ...open, coatingUm: 1 }).verdict).toBe('undetermined')
    expect(judged('sac305', open).verdict).toBe('fails')
  })
  // Geometry by hand, contact angle 0° on lead and land: width and height of the fillet (1.9 − 0.5)/2 = 0.7 mm,
  // quarter circle 2π · (1 − π/4) · 0.7² · (0.25 + 0.2234 · 0.7) = 0.2685 mm³ = 2.282 mg at 8.5 g/cm³;
  // gold π · 0.5 · 0.7 mm² · 0.2 µm · 19.3 g/cm³ = 0.004244 mg: 0.186 %.
  test('an unplated hole has no solder but its fillet', () => {
    const bare = leadHole({ plated: false, leadMm: 0.5, leadToleranceMm: 0, holeMm: 0.8, holeToleranceMm: 0 })
    const thin = { ...goldLead, coatingUm: 0.1, coatingMostUm: 0.2 }
    expect(judged('sn60pb40', thin, [bare]).found).toContain('contact angle to design for is not specified')
    const finding = judged('sn60pb40', thin, [bare], set(contactAngle, 0))
    expect(finding.margin?.found).toBeCloseTo(0.186, 3)
    expect(finding.parts?.[0]?.measured?.solder).toMatchObject({ value: expect.closeTo(2.282, 2) as number })
  })
  test('a component without a finish is not taken as free of gold', () => {
    const finding = judged('sac305', leadFinish({ component: 'R2' }))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing?.[0]).toContain('not among the lead finishes')
  })
  test('names match whatever their capitals', () => {
    expect(judged('sac305', { ...goldLead, component: ' r1 ' }).verdict).toBe('fails')
  })
})

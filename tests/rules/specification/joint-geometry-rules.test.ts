import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { CAPILLARY_LENGTH_MM } from '@/shared/materials/fillet-data'
import { capillaryRiseMm, filletOf } from '@/shared/physics/fillet'
import { contactAngle, fillEdition, leadProjection } from '@/shared/plan/parameters/joint-geometry'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { productClass, serviceYears } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { fillAskedPct, holeFill } from '@/shared/rules/specification/hole-fill'
import { jointFillet } from '@/shared/rules/specification/joint-fillet'
import { afterRemedy, factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

const joint = { landMm: 1.8, leadMm: 0.8 }

describe('the fillet in section', () => {
  // Circle through lead and land: contact angle 0° at the lead, 30° at the land: height/width 1.732.
  test('0° at the lead and 30° at the land: 1.732 times as high as wide', () => {
    const { heightMm, widthMm, shape } = filletOf(joint, { leadDeg: 0, landDeg: 30 })
    expect(widthMm).toBeCloseTo(0.5, 12)
    expect(heightMm / widthMm).toBeCloseTo(1.732, 3)
    expect(shape).toBe('concave')
  })
  test('a quarter circle at 0° on both', () => {
    expect(filletOf(joint, { leadDeg: 0, landDeg: 0 }).heightMm).toBeCloseTo(0.5, 12)
  })
  test('straight where the angles add up to 90°, without a jump', () => {
    const straight = filletOf(joint, { leadDeg: 30, landDeg: 60 })
    expect(straight.shape).toBe('straight')
    expect(straight.heightMm).toBeCloseTo(filletOf(joint, { leadDeg: 30, landDeg: 59.9999 }).heightMm, 4)
    expect(straight.heightMm).toBeCloseTo(filletOf(joint, { leadDeg: 30, landDeg: 60.0001 }).heightMm, 4)
    expect(filletOf(joint, { leadDeg: 50, landDeg: 60 }).shape).toBe('convex')
  })
  test('equal angles give a fillet as high as wide', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 89, noNaN: true }), (angle) => {
        const { heightMm, widthMm } = filletOf(joint, { leadDeg: angle, landDeg: angle })
        expect(heightMm / widthMm).toBeCloseTo(1, 6)
      }),
    )
  })
  test.each([-1, 90, Number.NaN])('a contact angle of %s° is refused', (angle) => {
    expect(() => filletOf(joint, { leadDeg: angle, landDeg: 0 })).toThrow(RangeError)
  })
})

describe('rise at rest', () => {
  // Computed from 2γ·cos θ/(ρ·g·gap) with 0.40 N/m and 8000 kg/m³: 58.9 mm at 0.15 mm, 35.3 mm at 0.25 mm, 30°.
  test.each([
    [0.15, 58.9],
    [0.25, 35.3],
  ])('a gap of %s mm draws %s mm', (gapMm, mm) => {
    expect(capillaryRiseMm(gapMm, 30)).toBeCloseTo(mm, 1)
  })
  test('the capillary length is 3.193 mm', () => {
    expect(Math.sqrt((2 * 0.4) / (8000 * 9.81)) * 1e3).toBeCloseTo(CAPILLARY_LENGTH_MM.value, 3)
  })
})

const board = (rows: readonly LeadHole[], ...more: SetValue[]) => ({
  values: [
    set(leadHoles, rows),
    set(barrelPlating, 25),
    set(boardThickness, 1.6),
    set(solderAlloy, 'sn60pb40'),
    set(productClass, '2'),
    set(serviceYears, 20),
    set(contactAngle, 30),
    ...more,
  ],
})

describe('joint fillet', () => {
  test('a land of 1.9 and a lead of 0.8 make a fillet of 0.55 mm that a lead of 1 mm stands out of', () => {
    const finding = findingOf(jointFillet, board([leadHole()], set(leadProjection, 1)))
    expect(finding.verdict).toBe('meets')
    expect(finding.found).toContain('concave fillet 0.55 mm wide and 0.55 mm high')
  })
  test('a lead that the fillet hides is marginal, and the projection of the remedy meets', () => {
    const facts = board([leadHole()], set(leadProjection, 0.3))
    expect(findingOf(jointFillet, facts).verdict).toBe('marginal')
    expect(afterRemedy(jointFillet, factsWith(facts)).verdict).toBe('meets')
  })
  test.each([
    [30, 'meets'],
    [40, 'marginal'],
    [45, 'marginal'],
    [46, 'fails'],
  ] as const)('a contact angle of %s° %s', (angle, verdict) => {
    const facts = board([leadHole()], set(leadProjection, 1.5), set(contactAngle, angle))
    expect(findingOf(jointFillet, facts).verdict).toBe(verdict)
  })
  test('an angle that nobody has stated shapes no fillet and draws no solder', () => {
    const silent = board([leadHole()], set(leadProjection, 1.5)).values.filter(
      ([key]) => key !== contactAngle.key,
    )
    for (const rule of [jointFillet, holeFill])
      expect(findingOf(rule, { values: silent }).missing).toEqual([contactAngle.label])
  })
  test('the contact angle of the remedy meets', () => {
    const facts = factsWith(board([leadHole()], set(leadProjection, 1.5), set(contactAngle, 60)))
    expect(afterRemedy(jointFillet, facts).verdict).toBe('meets')
  })
  // Annulus (1.15² − 0.8²)π/4 · 1.6 = 0.8577 mm³ at every angle; 100 joints at 8.5 g/cm³ (by hand).
  test.each([
    // Quarter circles: r 0.55, a 0.4: 2π · 0.2146 · 0.3025 · 0.5229 = 0.2133 each, 1.2843 mm³ a joint.
    [0, '1.09 g'],
    // Cone frustums: π · 0.55/3 · (0.95² + 0.95 · 0.4 + 0.4²) − π · 0.4² · 0.55 = 0.5544 each, 1.9665 mm³ a joint.
    [45, '1.67 g'],
  ])('adds up the solder of a board at %s°', (angle, grams) => {
    const facts = board([leadHole({ joints: 100 })], set(leadProjection, 1), set(contactAngle, angle))
    expect(findingOf(jointFillet, facts).notes?.[0]).toContain(grams)
  })
  test('an unplated joint has one fillet and nothing in the hole', () => {
    const facts = board(
      [leadHole({ joints: 100, plated: false })],
      set(leadProjection, 1),
      set(contactAngle, 0),
    )
    // 0.2133 mm³ · 8.5 g/cm³ · 100 = 0.181 g (by hand).
    expect(findingOf(jointFillet, facts).notes?.[0]).toContain('0.181 g')
  })
})

describe('hole fill', () => {
  test('a normal gap draws solder far above the board', () => {
    const finding = findingOf(holeFill, board([leadHole()]))
    expect(finding.verdict).toBe('meets')
    expect(finding.notes?.join(' ')).toContain('aim at full fill')
  })
  // IPC-A-610F, Table 7-4: class 2 and 3 75 %; class 2 for components of
  // 14 leads or more 50 % or 1.2 mm, whichever is less (secondary copy). The leads are the component's: joints of a row say nothing.
  test.each([
    [{ leadsEach: 2, boardMm: 1.6, grade: '2' }, 75],
    [{ leadsEach: 14, boardMm: 1.6, grade: '2' }, 50],
    [{ leadsEach: 14, boardMm: 3.2, grade: '2' }, 37.5],
    [{ leadsEach: 14, boardMm: 1.6, grade: '3' }, 75],
    [{ leadsEach: 14, boardMm: 1.6, grade: '1' }, 0],
    [{ leadsEach: undefined, boardMm: 1.6, grade: '2' }, 75],
  ] as const)('%o asks %s %%', (row, percent) => {
    expect(fillAskedPct(row, ['ipc-a-610f'])).toBeCloseTo(percent, 9)
  })
  test('80 joints of resistors with two leads each get no relief', () => {
    const two = board(
      [leadHole({ component: 'R1–R40', joints: 80, leadsEach: 2 })],
      set(productClass, '2'),
      set(fillEdition, 'ipc-a-610f'),
    )
    expect(findingOf(holeFill, two).found).toContain('75 % fill is asked')
    const many = board(
      [leadHole({ component: 'U1', joints: 14, leadsEach: 14 })],
      set(productClass, '2'),
      set(fillEdition, 'ipc-a-610f'),
    )
    expect(findingOf(holeFill, many).found).toContain('50 % fill is asked')
  })
  test('without an edition the strictest applies', () => {
    expect(findingOf(holeFill, board([leadHole()])).found).toContain('100 % fill is asked')
    expect(findingOf(holeFill, board([leadHole()], set(fillEdition, 'ipc-a-610f'))).found).toContain('75 %')
  })
  test('a lead that fills its hole leaves no gap to rise in, and is not judged good', () => {
    expect(findingOf(holeFill, board([leadHole({ holeMm: 0.8 })])).verdict).toBe('undetermined')
  })
})

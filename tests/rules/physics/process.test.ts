import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { floorLifeOf } from '@/shared/materials/moisture-sensitivity'
import { MAGNIFICATION_BY_LAND, magnificationFor } from '@/shared/materials/inspection-magnification'
import { BATH_LIMITS, SUMMED_CONTAMINANTS } from '@/shared/materials/bath-contaminants'
import { acidNumber } from '@/shared/physics/acid-number'
import { exchangeMassKg, shareAfterExchangePct } from '@/shared/physics/bath-exchange'
import {
  extractedAreaCm2,
  perSquareInch,
  sodiumChlorideEquivalentUgPerCm2,
} from '@/shared/physics/ionic-equivalents'
import { minBend } from '@/shared/physics/lead-bend'
import { contactLengthFor, conveyorSpeedFor, dwellS } from '@/shared/physics/wave-contact'

describe('acid number', () => {
  // Formula of ISO 9455-3 from memory; number computed: 5.2 ml of 0.1 mol/l on 2.0 g.
  test('5.2 ml of 0.1 mol/l on 2.0 g is 14.59 mg KOH/g', () => {
    expect(acidNumber({ titrantMl: 5.2, titrantMolPerL: 0.1, sampleG: 2 })).toBeCloseTo(14.59, 2)
  })
  test('no sample, no number', () => {
    expect(() => acidNumber({ titrantMl: 5, titrantMolPerL: 0.1, sampleG: 0 })).toThrow(RangeError)
  })
})

describe('bath exchange', () => {
  // Balance of masses, computed: 300 kg, copper 0.36 to 0.25 % with new solder at 0.02 %.
  test('97.06 kg of 300 kg brings copper from 0.36 to 0.25 %', () => {
    expect(exchangeMassKg({ bathKg: 300, foundPct: 0.36, targetPct: 0.25, addedPct: 0.02 })).toBeCloseTo(
      97.06,
      2,
    )
  })
  // Balance of masses, computed: tin from 61 to 63 % in 400 kg with pure tin.
  test('tin rises from 61 to 63 % in 400 kg by exchanging 20.513 kg for pure tin', () => {
    expect(exchangeMassKg({ bathKg: 400, foundPct: 61, targetPct: 63, addedPct: 100 })).toBeCloseTo(20.513, 3)
  })
  test('new solder as dirty as the bath cannot clean it', () => {
    expect(() => exchangeMassKg({ bathKg: 300, foundPct: 0.36, targetPct: 0.25, addedPct: 0.36 })).toThrow(
      RangeError,
    )
    expect(() => exchangeMassKg({ bathKg: 300, foundPct: 0.36, targetPct: 0.25, addedPct: 0.3 })).toThrow(
      RangeError,
    )
  })
  test('law: the exchanged bath holds the target', () => {
    const bath = fc.record({
      bathKg: fc.double({ min: 1, max: 2000, noNaN: true }),
      addedPct: fc.double({ min: 0, max: 0.1, noNaN: true }),
      targetPct: fc.double({ min: 0.11, max: 0.3, noNaN: true }),
      foundPct: fc.double({ min: 0.31, max: 2, noNaN: true }),
    })
    fc.assert(
      fc.property(bath, (b) => {
        expect(shareAfterExchangePct({ ...b, exchangedKg: exchangeMassKg(b) })).toBeCloseTo(b.targetPct, 9)
      }),
    )
  })
})

describe('bath limits', () => {
  test('the five single limits add to more than the sum allows, so the sum is a test of its own', () => {
    const { max, sumMax } = BATH_LIMITS['j-std-001c-assembly']
    const sum = SUMMED_CONTAMINANTS.reduce((total, metal) => total + max[metal], 0)
    expect(sum).toBeCloseTo(0.518, 9)
    expect(sumMax).toBe(0.4)
  })
  test('the editions disagree on aluminium only', () => {
    expect(BATH_LIMITS['j-std-001c-assembly'].max.aluminium).toBe(0.008)
    expect(BATH_LIMITS['mil-std-2000a-assembly'].max.aluminium).toBe(0.006)
    expect({ ...BATH_LIMITS['j-std-001c-assembly'].max, aluminium: 0 }).toEqual({
      ...BATH_LIMITS['mil-std-2000a-assembly'].max,
      aluminium: 0,
    })
  })
})

describe('wave dwell', () => {
  // Definition; examples of common practice: 5 cm at 150 cm/min and 2 cm at 60 cm/min, both 2 s.
  test.each([
    [50, 1.5, 2],
    [20, 0.6, 2],
    [45, 0.9, 3],
  ])('%s mm at %s m/min is %s s', (mm, speed, seconds) => expect(dwellS(mm, speed)).toBeCloseTo(seconds, 12))
  test('a stopped conveyor has no dwell', () => expect(() => dwellS(50, 0)).toThrow(/speed/))
  test('law: speed and length found for a dwell give it back', () => {
    const positive = fc.double({ min: 0.1, max: 100, noNaN: true })
    fc.assert(
      fc.property(positive, positive, (mm, seconds) => {
        expect(dwellS(mm, conveyorSpeedFor(mm, seconds))).toBeCloseTo(seconds, 6)
        expect(dwellS(contactLengthFor(mm, seconds), mm)).toBeCloseTo(seconds, 6)
      }),
    )
  })
})

describe('ionic equivalents', () => {
  // Formula from memory (inputs named in IPC-TM-650 2.3.25); numbers computed.
  test('0.62 µg/ml in 500 ml from both faces of 160 × 100 mm is 0.9688 µg/cm²', () => {
    const areaCm2 = extractedAreaCm2({ lengthMm: 160, widthMm: 100, componentAllowancePct: 0 })
    expect(areaCm2).toBe(320)
    const residue = sodiumChlorideEquivalentUgPerCm2({ concentrationUgPerMl: 0.62, solventMl: 500, areaCm2 })
    expect(residue).toBeCloseTo(0.96875, 9)
    expect(perSquareInch(residue)).toBeCloseTo(6.25, 4)
  })
  test('an allowance of 10 % for components lowers it to 0.8807', () => {
    const areaCm2 = extractedAreaCm2({ lengthMm: 160, widthMm: 100, componentAllowancePct: 10 })
    expect(
      sodiumChlorideEquivalentUgPerCm2({ concentrationUgPerMl: 0.62, solventMl: 500, areaCm2 }),
    ).toBeCloseTo(0.8807, 4)
  })
  test('1.56 µg/cm² is 10.064 µg/in²', () => expect(perSquareInch(1.56)).toBeCloseTo(10.064, 3))
})

describe('lead bends', () => {
  // IPC-A-610 and J-STD-001 lead bend table, as published in training texts: "less than 0.8 mm" one diameter,
  // "from 0.8 to 1.2 mm" one and a half, "greater than 1.2 mm" two; TM 9-254 p. 4-42; NASA from memory.
  test.each([
    [0.79, 0.79],
    [0.8, 1.2],
    [0.81, 1.215],
    [1.2, 1.8],
    [1.3, 2.6],
  ])('by size, a lead of %s mm bends at %s mm', (diameter, radius) =>
    expect(minBend(diameter, 'ipc-by-size').radiusMm).toBeCloseTo(radius, 9),
  )
  test('without an edition the strictest rules, and is named', () => {
    expect(minBend(0.6)).toMatchObject({ radiusMm: 1.2, straightMm: 1.5875 })
    expect(minBend(0.6).radiusFrom.edition).toMatch(/TM 9-254/)
    expect(minBend(1).straightFrom.edition).toMatch(/NASA/)
  })
})

describe('floor life', () => {
  // IPC/JEDEC J-STD-033 by level.
  test.each([
    ['1', null],
    ['2', 365 * 24],
    ['2a', 4 * 7 * 24],
    ['3', 168],
    ['4', 72],
    ['5', 48],
    ['5a', 24],
    ['6', 0],
  ] as const)('level %s: %s hours', (level, hours) => expect(floorLifeOf(level).hours).toBe(hours))
})

describe('magnification by land width', () => {
  // IPC-A-610 from memory.
  test.each([
    [1.8, 1.5, 3],
    [1.0, 3, 7.5],
    [0.5, 7.5, 10],
    [0.2, 20, 20],
  ])('a land of %s mm is looked at with %s to %s times', (width, min, max) =>
    expect(magnificationFor(width)).toMatchObject({ min, max }),
  )
  test('rows fall in width and rise in power', () => {
    const widths = MAGNIFICATION_BY_LAND.map((row) => row.fromMm)
    expect(widths).toEqual([...widths].sort((a, b) => b - a))
    expect(MAGNIFICATION_BY_LAND.every((row) => row.min <= row.max && row.max < row.referee)).toBe(true)
  })
})

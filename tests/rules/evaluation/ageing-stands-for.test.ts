import { describe, expect, test } from 'vitest'
import { AGEING_METHODS, type AgeingKey } from '@/shared/materials/ageing-methods'
import { ageingEquivalence } from '@/shared/physics/ageing-equivalence'
import { ageingClaims } from '@/shared/plan/parameters/evaluation-ageing'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import { HOURS_PER_MONTH } from '@/shared/quantity/calendar'
import { ageingStandsFor } from '@/shared/rules/evaluation/ageing-stands-for'
import { findingOf, set, type SetValue } from '../facts-builder'
import { stated } from '../lots-builder'

const store = { temperatureC: 25, relativeHumidityPct: 60 }

describe('what an ageing stands for', () => {
  // Arrhenius between 25 and 155 °C: 55.4 kJ/mol is a factor of exp(6663.1 · (1/298.15 − 1/428.15)),
  // 885; 127.9 kJ/mol is 6.4 million (NIST/SEMATECH e-Handbook 8.1.5.1; arithmetic made apart).
  test('16 h at 155 °C: from 19 months to a geological age', () => {
    const span = ageingEquivalence(AGEING_METHODS['dry-heat-155-16h'], store)
    if (span.kind !== 'span') throw new Error('a span was expected')
    expect(span.minMonths).toBeCloseTo((16 * 885) / HOURS_PER_MONTH, 1)
    expect(span.maxMonths / ((16 * 6.4e6) / HOURS_PER_MONTH)).toBeCloseTo(1, 1)
    expect(span.mechanism).toBe('growth of compound')
  })
  test('a quarter of the hours is a quarter of the months', () => {
    const [four, sixteen] = (['dry-heat-155-4h', 'dry-heat-155-16h'] as const).map((key) =>
      ageingEquivalence(AGEING_METHODS[key], store),
    )
    if (four?.kind !== 'span' || sixteen?.kind !== 'span') throw new Error('spans were expected')
    expect(sixteen.minMonths / four.minMonths).toBeCloseTo(4, 9)
  })
  test('damp heat gives the two published sets of constants, and says what they were fitted to', () => {
    const span = ageingEquivalence(AGEING_METHODS['damp-heat-40-93-10d'], store)
    if (span.kind !== 'span') throw new Error('a span was expected')
    expect(span.maxMonths).toBeGreaterThan(span.minMonths)
    expect(span.mechanism).toContain('aluminium')
  })
  test.each(['steam-1h', 'steam-4h', 'steam-8h', 'steam-16h'] as const)(
    '%s stands for no time at all',
    (key) => {
      expect(ageingEquivalence(AGEING_METHODS[key], store)).toMatchObject({ kind: 'none' })
    },
  )
  test('an impossible store is refused', () => {
    expect(() =>
      ageingEquivalence(AGEING_METHODS['dry-heat-155-4h'], { ...store, temperatureC: -300 }),
    ).toThrow(RangeError)
    expect(() =>
      ageingEquivalence(AGEING_METHODS['damp-heat-40-93-10d'], { ...store, relativeHumidityPct: 0 }),
    ).toThrow(RangeError)
  })
})

const aged = (ageing: AgeingKey): SetValue => set(testConditions, [stated('rotary-dip', { ageing })])
const findingWith = (...values: SetValue[]) => findingOf(ageingStandsFor, { values })
const at25 = set(storageTemperature, 25)
const months = (value: number) => set(boardStorageMonths, value)
const claim = (method: AgeingKey, of: number): SetValue =>
  set(ageingClaims, [
    { method, months: of, claimedBy: 'Northgate Circuits', document: 'letter of 2026-01-20' },
  ])

describe('the ageing specified', () => {
  test.each([
    ['dry-heat-155-16h', 12, 'meets'],
    ['dry-heat-155-4h', 12, 'marginal'],
    ['dry-heat-155-4h', 4, 'meets'],
    ['steam-8h', 12, 'not applicable'],
    ['none', 12, 'not applicable'],
    ['damp-heat-40-93-10d', 12, 'not applicable'],
  ] as const)('%s for %s months at 25 °C: %s', (ageing, wanted, verdict) => {
    expect(findingWith(aged(ageing), at25, months(wanted)).verdict).toBe(verdict)
  })
  test('the longer of the two stores counts', () => {
    expect(findingWith(aged('dry-heat-155-4h'), at25, months(3), set(leadStorageMonths, 24)).verdict).toBe(
      'marginal',
    )
  })
  test('a hot store outruns the ageing', () => {
    // At 85 °C the factor is 21 to 1120 (same arithmetic): 2 h stand for 2 to 93 days.
    expect(findingWith(aged('dry-heat-155-2h'), set(storageTemperature, 85), months(12)).verdict).toBe(
      'fails',
    )
  })
  test('steam is named for what it is', () => {
    expect(findingWith(aged('steam-8h'), at25, months(12)).found).toContain('no published relation')
  })
  test('without a store temperature dry heat stays open, steam does not', () => {
    expect(findingWith(aged('dry-heat-155-4h')).verdict).toBe('undetermined')
    expect(findingWith(aged('steam-8h')).verdict).toBe('not applicable')
  })
  test('without a time in store it stands for nothing that is asked', () => {
    expect(findingWith(aged('dry-heat-155-4h'), at25).verdict).toBe('undetermined')
  })
})

describe('a claim', () => {
  test('for steam is kept as a claim with its author and never used', () => {
    const finding = findingWith(aged('steam-8h'), at25, claim('steam-8h', 12))
    expect(finding.verdict).toBe('marginal')
    expect(finding.found).toContain('12 months claimed by Northgate Circuits')
    expect(finding.found).toContain('kept as a claim, not used')
  })
  test.each([
    [19, 'meets'],
    [60, 'marginal'],
  ] as const)('of %s months for 16 h dry heat: %s', (of, verdict) => {
    expect(findingWith(aged('none'), at25, claim('dry-heat-155-16h', of)).verdict).toBe(verdict)
  })
  test('beyond every published energy is refused', () => {
    expect(findingWith(aged('none'), set(storageTemperature, 85), claim('dry-heat-155-2h', 12)).verdict).toBe(
      'fails',
    )
  })
})

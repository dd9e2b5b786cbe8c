import { describe, expect, test } from 'vitest'
import {
  fluxControlMethod,
  fluxDensityCoefficient,
  fluxDensityTarget,
  fluxDensityTolerance,
  fluxReferenceTemperature,
  fluxSolids,
  fluxTankVolume,
  thinnerDensity,
} from '@/shared/plan/parameters/control-flux'
import { additionPerLitre } from '@/shared/physics/flux-density'
import { fluxDensityRule } from '@/shared/rules/control/flux-density'
import { findingOf, set, type FactsInput } from '../facts-builder'
import { answer, INSTRUMENT, logOf, worked } from '../log-builder'

const specified = [
  set(fluxControlMethod, 'density'),
  set(fluxSolids, 25),
  set(fluxDensityTarget, 0.82),
  set(fluxDensityTolerance, 0.005),
  set(fluxReferenceTemperature, 25),
  set(fluxDensityCoefficient, 0.00085),
  set(thinnerDensity, 0.79),
  set(fluxTankVolume, 12),
]
const read = (densityGPerMl: number, temperatureC = 25, at = '2026-02-02T08:00:00Z') => ({
  at,
  densityGPerMl,
  temperatureC,
})
const judged = (rows: ReturnType<typeof read>[], over: FactsInput = {}) =>
  findingOf(fluxDensityRule, {
    values: specified,
    logs: [logOf('flux-density', rows)],
    instruments: [INSTRUMENT],
    ...over,
    records: { ...worked(), ...over.records },
  })

describe('flux density', () => {
  // Common practice, no published source: 0.805 g/ml at 30 °C is 0.809 g/ml at 25 °C.
  test('a reading is judged at the reference temperature, not as read', () => {
    const finding = judged([read(0.815, 30)])
    expect(finding.verdict).toBe('meets')
    expect(finding.margin?.found).toBeCloseTo(0.81925, 9)
    expect(finding.working[0]).toMatchObject({
      numbers: '0.815 + 0.00085 · (30 − 25)',
      result: '0.81925 g/ml',
    })
    expect(judged([read(0.815, 18)]).verdict).toBe('fails')
  })

  // ρ(T₀) = ρ(T) + k · (T − T₀): 0.815 + 0.001 · (30 − 20) = 0.825 g/ml.
  test('reference and coefficient are those stated, not the usual ones', () => {
    const values = [...specified, set(fluxReferenceTemperature, 20), set(fluxDensityCoefficient, 0.001)]
    const finding = judged([read(0.815, 30)], { values })
    expect(finding.margin?.found).toBeCloseTo(0.825, 9)
    expect(finding.measured).toEqual({ reference: { value: 20, unit: '°C' } })
  })
  test.each([fluxSolids, fluxDensityTarget, fluxDensityTolerance])(
    'asks for $label alone where it is missing',
    ({ key, label }) => {
      const finding = judged([read(0.82)], { values: specified.filter(([held]) => held !== key) })
      expect(finding).toMatchObject({ verdict: 'undetermined', missing: [label] })
    },
  )

  // Worked example by balance of masses: 0.84 to 0.82 with thinner 0.79 takes 0.6667 l/l; 12 l take 8 l.
  test('too dense: says the thinner to add, and adding it meets', () => {
    const finding = judged([read(0.84)])
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toMatch(/0\.667 l of thinner to each litre \(8 l to the 12 l/)
    expect(finding.remedy?.message).toMatch(/exchange 4\.8 l for thinner/)
    const added = additionPerLitre({ foundGPerMl: 0.84, targetGPerMl: 0.82, addedGPerMl: 0.79 })
    const blended = (0.84 + added * 0.79) / (1 + added)
    const after = judged([read(0.84), read(blended, 25, '2026-02-02T09:00:00Z')], {
      records: { 'signal-answer': [answer({ readingAt: '2026-02-02T08:00:00Z' })] },
    })
    expect(after.verdict).toBe('meets')
  })

  test('the thinner’s flammability is said whatever the verdict', () => {
    expect(judged([read(0.82)]).cautions?.join()).toMatch(/flammable/)
    expect(judged([read(0.84)]).cautions?.join()).toMatch(/flammable/)
  })

  test('too thin: no thinner is proposed', () => {
    const finding = judged([read(0.8)])
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toMatch(/fresh flux/)
  })

  test.each([
    [0.825, 'marginal'],
    [0.8251, 'fails'],
    [0.8149, 'fails'],
    [0.8239, 'meets'],
  ])('%s g/ml at the edge of 0.82 ± 0.005 %s', (density, verdict) =>
    expect(judged([read(density)]).verdict).toBe(verdict),
  )

  test('low-solids flux cannot be controlled by density', () => {
    const low = specified.map((value) => (value[0] === 'flux-solids' ? set(fluxSolids, 2.2) : value))
    const finding = judged([read(0.82)], { values: low })
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toMatch(/acid number/)
  })

  test('exactly 5 % solids is enough; an unknown content is undetermined', () => {
    const at5 = specified.map((value) => (value[0] === 'flux-solids' ? set(fluxSolids, 5) : value))
    expect(judged([read(0.82)], { values: at5 }).verdict).toBe('meets')
    const unknown = specified.filter(([key]) => key !== 'flux-solids')
    const finding = judged([read(0.82)], { values: unknown })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toEqual(['Solids in the flux'])
  })

  test('another way of control: nothing is asked of density', () => {
    expect(findingOf(fluxDensityRule, { values: [set(fluxControlMethod, 'acid-number')] }).verdict).toBe(
      'not applicable',
    )
  })

  test('no reading, or only readings without temperature, is undetermined', () => {
    expect(judged([]).verdict).toBe('undetermined')
    const blind = logOf('flux-density', [{ at: '2026-02-02T08:00:00Z', densityGPerMl: 0.82 }])
    expect(judged([], { logs: [blind] }).verdict).toBe('undetermined')
  })

  test('an earlier excursion must be answered; an answer to another reading does not count', () => {
    const rows = [read(0.84, 25, '2026-02-01T08:00:00Z'), read(0.845, 25, '2026-02-01T12:00:00Z'), read(0.82)]
    expect(judged(rows).verdict).toBe('fails')
    expect(judged(rows).remedy?.message).toMatch(/2026-02-01T08:00:00/)
    const other = answer({ readingAt: '2026-02-01T12:00:00Z' })
    expect(judged(rows, { records: { 'signal-answer': [other] } }).verdict).toBe('fails')
    expect(judged(rows, { records: { 'signal-answer': [answer({})] } }).verdict).toBe('meets')
  })

  test('an unanswered excursion fails, whoever reads next', () => {
    const lapsed = { ...INSTRUMENT, calibratedOn: '2024-01-01', dueOn: '2025-01-01' }
    const rows = [read(0.84, 25, '2026-02-01T08:00:00Z'), read(0.82)]
    expect(judged(rows, { instruments: [lapsed] }).verdict).toBe('fails')
    const records = { 'signal-answer': [answer({})] }
    expect(judged(rows, { instruments: [lapsed], records }).verdict).toBe('undetermined')
  })

  test('a hydrometer out of calibration proves nothing', () => {
    const lapsed = { ...INSTRUMENT, calibratedOn: '2024-01-01', dueOn: '2025-01-01' }
    const finding = judged([read(0.82)], { instruments: [lapsed] })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/due on 2025-01-01/)
  })

  test('values taken for want of a data sheet are said', () => {
    const bare = specified.slice(0, 4)
    const finding = judged([read(0.82)], { values: bare })
    expect(finding.notes?.join()).toMatch(/0\.00085/)
    expect(finding.notes?.join()).toMatch(/0\.781/)
  })
})

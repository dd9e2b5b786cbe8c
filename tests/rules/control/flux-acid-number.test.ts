import { describe, expect, test } from 'vitest'
import {
  fluxAcidNumberTarget,
  fluxAcidNumberTolerance,
  fluxControlMethod,
} from '@/shared/plan/parameters/control-flux'
import { fluxAcidNumberRule } from '@/shared/rules/control/flux-acid-number'
import { findingOf, set } from '../facts-builder'
import { INSTRUMENT, logOf, worked } from '../log-builder'

const method = set(fluxControlMethod, 'acid-number')
const values = [method, set(fluxAcidNumberTarget, 18), set(fluxAcidNumberTolerance, 1)]
const titrated = (titrantMl: number) =>
  logOf('flux-acid-number', [{ at: '2026-02-02T08:00:00Z', titrantMl, titrantMolPerL: 0.1, sampleG: 5 }])
const judged = (titrantMl: number) =>
  findingOf(fluxAcidNumberRule, {
    values,
    logs: [titrated(titrantMl)],
    instruments: [INSTRUMENT],
    records: worked(),
  })

describe('flux acid number', () => {
  // Definition: 16.04 ml of 0.1 mol/l in 5 g: 16.04 · 0.1 · 56.106 / 5 = 17.999 mg KOH/g (by hand).
  test('16.04 ml of 0.1 mol/l on 5 g are 18 mg KOH/g', () => {
    const finding = judged(16.04)
    expect(finding.verdict).toBe('meets')
    expect(finding.margin?.found).toBeCloseTo(17.999, 3)
  })
  test('19.1 and 16.9 lie outside and say which way to mend', () => {
    expect(judged(17.02).verdict).toBe('fails')
    expect(judged(17.02).remedy?.message).toMatch(/thinner/)
    expect(judged(15.06).verdict).toBe('fails')
    expect(judged(15.06).remedy?.message).toMatch(/fresh flux/)
  })
  test('another method asks nothing; none recorded or no target is undetermined', () => {
    expect(findingOf(fluxAcidNumberRule, { values: [set(fluxControlMethod, 'density')] }).verdict).toBe(
      'not applicable',
    )
    expect(findingOf(fluxAcidNumberRule, { values }).verdict).toBe('undetermined')
    expect(findingOf(fluxAcidNumberRule, { values: [method] }).missing).toHaveLength(2)
  })
})

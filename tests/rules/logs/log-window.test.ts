import { describe, expect, test } from 'vitest'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import {
  fluxControlMethod,
  fluxDensityTarget,
  fluxDensityTolerance,
} from '@/shared/plan/parameters/control-flux'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { bathTemperatureRule } from '@/shared/rules/control/bath-temperature'
import { windowOfLog } from '@/shared/logs/log-window'
import { factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { logOf } from '../log-builder'

const windowFor = (characteristic: string, ...values: SetValue[]) =>
  windowOfLog(characteristic, factsWith({ values }))

describe('the window that a log’s chart is drawn against', () => {
  // Values common practice, no published source: the point is that chart and rule see one window.
  test('is the one that the rule judges: a selective fountain has no upper end but the target’s', () => {
    const values = [
      set(alloyFamily, 'tin-lead'),
      set(solderingProcess, 'selective'),
      set(bathTemperatureTarget, 300),
    ]
    expect(windowFor('bath-temperature', ...values)).toMatchObject({
      min: { value: 295 },
      max: { value: 305 },
    })
    const log = logOf('bath-temperature', [{ at: '2026-02-01T08:00:00Z', bathC: 302 }])
    expect(findingOf(bathTemperatureRule, { values, logs: [log] }).verdict).not.toBe('fails')
  })
  test('is none where the programme solders or controls in another way', () => {
    const [reflow, hand] = [set(solderingProcess, 'reflow'), set(solderingProcess, 'hand')]
    expect(windowFor('wave-contact', reflow)).toBeUndefined()
    expect(windowFor('wave-preheat', set(alloyFamily, 'tin-lead'), hand)).toBeUndefined()
    const flux = [set(fluxDensityTarget, 0.81), set(fluxDensityTolerance, 0.005)]
    expect(windowFor('flux-density', ...flux, set(fluxControlMethod, 'acid-number'))).toBeUndefined()
    expect(windowFor('flux-density', ...flux)).toMatchObject({
      min: { value: 0.805 },
      max: { value: 0.815 },
    })
  })
  test('of the immersion is told in mm of the board’s own thickness', () => {
    const thin = windowFor('wave-geometry', set(boardThickness, 0.8))
    const thick = windowFor('wave-geometry', set(boardThickness, 1.6))
    expect(thick?.unit).toBe('mm')
    expect(thick!.max!.value).toBeCloseTo(2 * thin!.max!.value, 12)
    expect(thick!.max!.value).toBeLessThanOrEqual(1.6)
  })
})

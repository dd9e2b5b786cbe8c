import { describe, expect, test } from 'vitest'
import { samplingOfLot, samplingSpecified } from '@/shared/sampling/sampling-of-lot'
import { settingsOf } from '@/shared/sampling/sampling-reads'
import { factsWith } from '../facts-builder'
import { boardPlan, lot, rotaryDip, testOf, timer, times } from '../lots-builder'

describe('the sampling of one lot', () => {
  const tested = lot({ tests: [rotaryDip(times(13, 1.5))] })
  const facts = factsWith({ values: boardPlan, instruments: [timer], lots: [tested] })
  test('says plan, risk, sample and proof', () => {
    const [dip, ...others] = samplingOfLot(facts, tested)
    expect(others).toEqual([])
    expect(dip).toMatchObject({ method: 'rotary-dip', label: 'Rotary dip', asked: true })
    expect(dip?.planMessage).toContain('13 pieces, accept on 0')
    expect(dip?.riskMessage).toContain('16.2 %')
    expect(dip?.sample).toMatchObject({ tested: 13, nonconforming: 0, outcome: { decided: 'accepted' } })
    expect(dip?.proofMessage).toContain('at most 39 of 200')
  })
  test('proves nothing before a test', () => {
    const untested = lot()
    const [dip] = samplingOfLot(factsWith({ values: boardPlan, lots: [untested] }), untested)
    expect(dip?.sample).toBeUndefined()
    expect(dip?.proofMessage).toBeUndefined()
  })
  test('shows a test that was made unasked', () => {
    const floated = lot({ tests: [testOf('solder-float', [{ specimen: 's', outcome: 'sound' }])] })
    const shown = samplingOfLot(
      factsWith({ values: boardPlan, instruments: [timer], lots: [floated] }),
      floated,
    )
    expect(shown.map(({ method, asked }) => [method, asked])).toEqual([
      ['rotary-dip', true],
      ['solder-float', false],
    ])
  })
  test('waits for the specification', () => {
    const bare = factsWith({ lots: [tested] })
    expect(samplingOfLot(bare, tested)).toEqual([])
    expect(samplingSpecified(bare)).toBeUndefined()
    expect(settingsOf(samplingSpecified(facts)!)).toMatchObject({
      scheme: 'single',
      level: 'S-3',
      limit: '1.0',
    })
  })
})

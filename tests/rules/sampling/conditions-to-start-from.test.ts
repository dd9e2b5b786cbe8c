import { expect, test } from 'vitest'
import { rotaryDip as dipMethod } from '@/shared/methods/rotary-dip'
import { solderFloat } from '@/shared/methods/solder-float'
import { wettingBalance } from '@/shared/methods/wetting-balance'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { conditionsToStartFrom } from '@/shared/lot-tests/conditions-to-start-from'
import { factsWith, set } from '../facts-builder'
import { boardConditions, boardPlan, lot, rotaryDip, stated, timer, times } from '../lots-builder'

/* Common practice, no published source: a form starts with what was asked, and first with what was not tried yet. */

const twice = [
  ...boardPlan,
  set(testConditions, [stated('rotary-dip'), stated('rotary-dip', { ageing: 'steam-8h' })]),
]

test('a test starts with the condition that is specified for it', () => {
  const [start, ...others] = conditionsToStartFrom(factsWith({ values: boardPlan }), lot(), dipMethod)
  expect(others).toEqual([])
  expect(start).toMatchObject({ message: '', tried: false, values: boardConditions })
  expect(Object.keys(start?.values ?? {}).sort()).toEqual(['ageing', 'alloy', 'bathTemperatureC', 'flux'])
})

test('of several that are stated, those come first that no test was made under', () => {
  const tested = lot({ tests: [rotaryDip(times(13, 1.2))] })
  const starts = conditionsToStartFrom(
    factsWith({ values: twice, instruments: [timer], lots: [tested] }),
    tested,
    dipMethod,
  )
  expect(starts.map(({ tried, values }) => [tried, values['ageing']])).toEqual([
    [false, 'steam-8h'],
    [true, 'none'],
  ])
  expect(starts[0]?.message).toMatch(/^after /)
})

// IPC-TM-650 2.4.13.1 and 2.6.8, from memory: floated at 288 ± 5 °C for 10 s.
test('a solder float starts with the least that counts', () => {
  expect(conditionsToStartFrom(factsWith({ values: boardPlan }), lot(), solderFloat)[0]?.values).toEqual({
    bathTemperatureC: 283,
    floatS: 10,
  })
})

test('nothing is made up where nothing is specified', () => {
  expect(conditionsToStartFrom(factsWith({ values: boardPlan }), lot(), wettingBalance)).toEqual([])
  expect(conditionsToStartFrom(factsWith(), lot(), dipMethod)).toEqual([])
})

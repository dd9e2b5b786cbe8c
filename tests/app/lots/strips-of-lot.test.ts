import { describe, expect, test } from 'vitest'
import { stripsOfLot } from '@/app/lots/strips-of-lot'
import { earlierDeliveries } from '@/shared/records/lot-identity'
import { factsWith, set } from '../../rules/facts-builder'
import { accepted, boardPlan, lot, rotaryDip, stated, testOf, timer } from '../../rules/lots-builder'
import { holeCopperMin } from '@/shared/plan/limits/evaluation-plating'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'

const specified = (values = boardPlan) => factsWith({ values, instruments: [timer] })

describe('the strips that lead the page of a lot', () => {
  test('a lot’s rotary dip stands against the limit in force, over the deliveries before it, oldest first', () => {
    const [first, second, other, now] = [
      lot({ code: 'B-01', receivedOn: '2026-01-02', tests: [rotaryDip([1.1, 1.3])], disposition: accepted }),
      lot({ code: 'B-02', receivedOn: '2026-01-20', tests: [rotaryDip([1.2])] }),
      lot({ code: 'K-01', receivedOn: '2026-01-21', part: 'coupon', tests: [rotaryDip([9])] }),
      lot({ code: 'B-03', receivedOn: '2026-02-02', tests: [rotaryDip([1.4, 2.1])] }),
    ]
    const earlier = earlierDeliveries(now, [now, other, second, first])
    const [strip, ...more] = stripsOfLot(now, earlier, specified())
    expect(more).toEqual([])
    expect(strip).toMatchObject({
      title: 'Rotary dip: wetting time',
      unit: 's',
      limits: { atMost: 2 },
      from: { authority: 'common practice' },
      own: { lot: { code: 'B-03' }, counted: [1.4, 2.1], setAside: [] },
      earlier: [
        { lot: { code: 'B-01' }, counted: [1.1, 1.3] },
        { lot: { code: 'B-02' }, counted: [1.2] },
      ],
    })
  })
  test('a test under other conditions than the specified ones is drawn, and does not count', () => {
    const hotter = rotaryDip([0.8], {
      id: 't-hot',
      conditions: { ...rotaryDip([]).conditions, bathTemperatureC: 260 },
    })
    const [strip] = stripsOfLot(lot({ tests: [rotaryDip([1.4]), hotter] }), [], specified())
    expect(strip?.own).toMatchObject({ counted: [1.4], setAside: [0.8] })
  })
  test('where two conditions are stated, each has a strip that says which it is', () => {
    const values = [
      ...boardPlan.filter(([key]) => key !== testConditions.key),
      set(testConditions, [stated('rotary-dip'), stated('rotary-dip', { ageing: 'steam-8h' })]),
    ]
    const aged = rotaryDip([1.7], {
      id: 't-aged',
      conditions: { ...rotaryDip([]).conditions, ageing: 'steam-8h' },
    })
    const strips = stripsOfLot(lot({ tests: [rotaryDip([1.4]), aged] }), [], specified(values))
    expect(strips.map(({ title, own }) => [title, own.counted])).toEqual([
      ['Rotary dip: wetting time, as received', [1.4]],
      ['Rotary dip: wetting time, after steam, 8 h', [1.7]],
    ])
  })
  test('while no sampling is specified every test counts, and a limit stands all the same', () => {
    const [strip] = stripsOfLot(lot({ tests: [rotaryDip([1.4])] }), [], factsWith())
    expect(strip).toMatchObject({ limits: { atMost: 2 }, own: { counted: [1.4] } })
  })
  test('copper on tracks and in holes has a strip each; where nothing is specified there is no limit', () => {
    const plated = testOf(
      'plating-thickness',
      [
        { specimen: '1', place: 'track', thicknessUm: 30 },
        { specimen: '1', place: 'hole', thicknessUm: 26 },
      ],
      { conditions: { deposit: 'copper', technique: 'microsection', uncertaintyUm: 0.3 } },
    )
    const strips = stripsOfLot(lot({ tests: [plated] }), [], factsWith())
    expect(strips.map(({ own, limits }) => [own.counted, limits])).toEqual([
      [[30], {}],
      [[26], { atLeast: holeCopperMin.byDefault.value }],
    ])
    expect(new Set(strips.map(({ title }) => title)).size).toBe(2)
  })
  test('an untested lot has none, and outcomes are counted elsewhere', () => {
    expect(stripsOfLot(lot(), [], specified())).toEqual([])
    const float = testOf('solder-float', [{ specimen: '1', outcome: 'sound' }])
    expect(stripsOfLot(lot({ tests: [float] }), [], specified())).toEqual([])
  })
})

test('no more than six deliveries are looked back at, the newest', () => {
  const days = ['01', '02', '03', '04', '05', '06', '07', '08']
  const all = days.map((day) => lot({ code: `B-${day}`, receivedOn: `2026-01-${day}` }))
  expect(earlierDeliveries(all[7]!, all).map(({ code }) => code)).toEqual([
    ...['B-02', 'B-03', 'B-04', 'B-05', 'B-06', 'B-07'],
  ])
})

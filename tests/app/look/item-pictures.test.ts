import fc from 'fast-check'
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { ItemPictures } from '@/app/pictures/item-pictures'
import { TablesOfItem } from '@/app/pictures/tables/tables-of-item'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { mayStayEmpty, STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { contactAngle, fillEdition } from '@/shared/plan/parameters/joint-geometry'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { processCosts } from '@/shared/plan/parameters/soldering-process'
import { cycleTest, useCycles } from '@/shared/plan/parameters/thermal-fatigue'
import { spacings } from '@/shared/plan/parameters/spacings'
import type { Facts } from '@/shared/rules/facts'
import { judgeAll } from '@/shared/rules/judge-all'
import { anyValue } from '../../laws/any-value'
import { factsWith, set, type SetValue } from '@/tests/rules/facts-builder'
import { leadHole } from '@/tests/rules/specification/lead-hole-rows'
import { soundBoard } from '@/tests/rules/specification/sound-board'
import { spacing } from '@/tests/rules/specification/spacing-rows'

const stage = STANDARD_PLAN.filter((item) => item.stage === 'specification')
const parameters = stage.flatMap((item) => item.parameters)

/** As much of a programme as pictures look at. */
function viewOf(facts: Facts): ProgrammeView {
  const items = stage.map((definition) => ({ definition, added: false, tailoredOut: null, lesson: null }))
  const { findings } = judgeAll(
    stage.flatMap(({ rules }) => rules),
    facts,
  )
  return { code: 'TX-1', state: { facts, items }, judgement: { findings } } as unknown as ProgrammeView
}

const drawn = (item: string, facts: Facts): string =>
  renderToStaticMarkup(createElement(ItemPictures, { item, view: viewOf(facts) }))
const text = (markup: string): string => markup.replaceAll(/<[^>]+>/g, ' ')
const sound = (...more: SetValue[]) => factsWith({ values: [...soundBoard(), ...more] })

const cost = (process: 'wave' | 'hand', fixed: number, perJoint: number) => ({
  process,
  fixed,
  perBoard: 2,
  perJoint,
  defectsPerMillion: 200,
  perRework: 5,
  foundPct: 95,
  failingPct: 10,
  perFieldRepair: 300,
})

/** No number that came to nothing, in the picture or beside it. */
const isWhole = (markup: string): boolean => !/NaN|Infinity|undefined|\[object|not a number|∞/.test(markup)

describe('pictures of the specification', () => {
  const facts = sound(set(processCosts, [cost('wave', 2000, 0.01), cost('hand', 100, 0.1)]))
  test.each([
    'joint-budget',
    'laminate',
    'holes-and-lands',
    'joint-geometry',
    'conductors-and-spacings',
    'lead-finish',
    'storage',
    'soldering-process',
  ])('%s is drawn, each picture with a name, a description and its numbers', (item) => {
    const markup = drawn(item, facts)
    const pictures = markup.match(/<svg class="drawing-picture[^>]*>/g) ?? []
    expect(pictures.length).toBeGreaterThan(0)
    expect(markup.match(/<desc [^>]*>[^<]+<\/desc>/g)?.length).toBe(pictures.length)
    expect(markup.match(/<figure /g)?.length).toBe(markup.match(/Numbers of “/g)?.length)
    expect(isWhole(markup)).toBe(true)
  })
  test('nothing is drawn where nothing is specified', () => {
    for (const { key } of stage) expect(text(drawn(key, factsWith())).trim(), key).toBe('')
  })
  test('whatever the door lets in, pictures are drawn of real numbers or left out', () => {
    const any = fc.tuple(
      ...parameters.map((parameter) =>
        mayStayEmpty(parameter) ? fc.option(anyValue(parameter), { nil: undefined }) : anyValue(parameter),
      ),
    )
    fc.assert(
      fc.property(any, (values) => {
        const entries = parameters.map(({ key }, index): SetValue => [key, values[index]])
        const someFacts = factsWith({
          values: [...soundBoard().slice(0, 5), ...entries.filter(([, value]) => value !== undefined)],
        })
        for (const { key } of stage) expect(isWhole(drawn(key, someFacts)), key).toBe(true)
      }),
      { numRuns: 25 },
    )
  })
})

test('a long hole table is drawn in part, and says so', () => {
  const rows = Array.from({ length: 40 }, (_, at) => leadHole({ component: `R${at}` }))
  for (const item of ['joint-geometry', 'holes-and-lands']) {
    expect(text(drawn(item, sound(set(leadHoles, rows)))), item).toContain(
      'Of 40 kinds the first 24 are drawn',
    )
  }
})

test('an unplated hole is drawn without a wall of copper, and called so', () => {
  const markup = drawn('holes-and-lands', sound(set(leadHoles, [leadHole({ plated: false })])))
  expect(text(markup)).toContain('A round lead in an unplated hole')
  expect(text(drawn('holes-and-lands', sound(set(leadHoles, [leadHole()]))))).toContain('in a plated hole')
})

describe('the joint in section', () => {
  // Width and height of an arc with equal angles are (land − lead)/2 = (1.9 − 0.8)/2 = 0.55 mm; quarter circles at 0°
  // hold 0.2133 mm³ each by Pappus, a full hole (1.15² − 0.8²)π/4 · 1.6 = 0.858 mm³ (by hand).
  const facts = sound(set(leadHoles, [leadHole()]), set(contactAngle, 0))
  test('says what the geometry gives', () => {
    const message = text(drawn('joint-geometry', facts))
    expect(message).toMatch(/Fillet height\s+0\.55 mm/)
    expect(message).toMatch(/Each of two fillets\s+0\.213 mm³/)
    expect(message).toMatch(/Solder in a full hole\s+0\.858 mm³/)
  })
  test('marks the least fill where an edition lets solder be missing', () => {
    const partly = sound(set(leadHoles, [leadHole()]), set(fillEdition, 'ipc-a-610f'))
    expect(text(drawn('joint-geometry', partly))).toContain('fill ≥ 1.2 mm')
    expect(text(drawn('joint-geometry', facts))).not.toContain('fill ≥')
  })
})

test('a pair that meets the solder bare is drawn by the part of its run across the travel', () => {
  // 20 mm at 30° to the travel lie 20 · sin 30° = 10 mm across it.
  const facts = sound(
    set(spacings, [spacing({ between: 'Rail', solderSide: 'bare', parallelMm: 20, travelAngleDeg: 30 })]),
  )
  expect(text(drawn('conductors-and-spacings', facts))).toMatch(/Across the travel\s+10 mm/)
})

test('swings of the service are drawn as the share of the test that they take', () => {
  // Equal cycles of test and use: one stands for one, so 100 a year for 20 years are 2000 of 4000, 50 %.
  const swing = { swingK: 50, hottestC: 80, dwellMin: 30 }
  const facts = sound(
    set(useCycles, [{ ...swing, cycle: 'Day', perYear: 100 }]),
    set(cycleTest, [{ ...swing, test: 'As in service', perDay: 100 / 365, cycles: 4000 }]),
  )
  expect(text(drawn('joint-budget', facts))).toMatch(/2000 cycles\s+50 %/)
})

describe('tables behind an item', () => {
  const tables = (item: string, facts: Facts): string =>
    renderToStaticMarkup(createElement(TablesOfItem, { item, view: viewOf(facts) }))
  test('mark the row that is specified, and name a source and how it was obtained in every row', () => {
    const markup = tables('laminate', sound())
    expect(text(markup)).toMatch(/FR-4, glass transition 135 °C\s+\(as specified\)/)
    const rows = markup.match(/<tr role="row">(?!<th role="columnheader")/g)?.length
    const sources = text(markup).match(/\((published|from memory|computed|common practice[^)]*)\)/g)?.length
    expect(sources).toBe(rows)
  })
  test('are whole with and without a specification', () => {
    for (const { key } of stage) {
      expect(isWhole(tables(key, sound())), key).toBe(true)
      expect(isWhole(tables(key, factsWith())), key).toBe(true)
    }
  })
})

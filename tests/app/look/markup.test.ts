import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, test } from 'vitest'
import { LogOverTime } from '@/app/drawing/log-over-time'
import { ReadingsAgainstLimit } from '@/app/drawing/readings-against-limit'
import { FourStages } from '@/app/drawing/four-stages'
import { Day, Moment } from '@/app/ui/date'
import { DepartmentTag } from '@/app/ui/department-tag'
import { Digest } from '@/app/ui/digest'
import { NumberField } from '@/app/ui/field'
import { GATE_INK } from '@/app/ui/gate-drawing'
import { GateMark } from '@/app/ui/gate-mark'
import { MarginBar } from '@/app/ui/margin-bar'
import { MarksToPlace } from '@/app/ui/marks-to-place'
import { PlaceNav } from '@/app/ui/place-nav'
import { Stamp } from '@/app/ui/stamp'
import { STANDING_ORDER } from '@/app/ui/status-shape'
import { StatusMark } from '@/app/ui/status-mark'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { GateStatus } from '@/shared/gate/gate'
import { STATUSES } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { VERDICTS } from '@/shared/rules/finding'

const DIGEST = '9f2c41ab07d3e85c6b19aa40f7c2d1e8b3954c60aa1278ffcd0e4471b29e6d53'
const GATE_STANDINGS = Object.keys(GATE_INK) as GateStatus[]
const text = (markup: string): string => markup.replaceAll(/<[^>]+>/g, '')

/** The drawing that a mark places, found among those kept on every sheet. */
function drawingOf(markup: string): string {
  const name = /<use href="#([^"]+)"/.exec(markup)?.[1]
  const kept = renderToStaticMarkup(createElement(MarksToPlace))
  return new RegExp(`<g id="${name}">(.*?)</g>`).exec(kept)?.[1] ?? ''
}

describe('marks never speak by colour alone', () => {
  const marks = [
    ...VERDICTS.map((verdict) => [verdict, createElement(VerdictMark, { verdict })] as const),
    ...STATUSES.map((status) => [status, createElement(StatusMark, { status })] as const),
    ...GATE_STANDINGS.map((status) => [status, createElement(GateMark, { status })] as const),
    ...DEPARTMENTS.map(
      (department) => [DEPARTMENT_NAMES[department], createElement(DepartmentTag, { department })] as const,
    ),
  ]
  test.each(marks)('%s is said in words and has a drawing', (word, mark) => {
    const markup = renderToStaticMarkup(mark)
    expect(text(markup)).toBe(word)
    expect(drawingOf(markup)).toMatch(/^<(path|circle)/)
  })
  test('no two of them share a drawing', () => {
    const drawings = marks.map(([, mark]) => drawingOf(renderToStaticMarkup(mark)))
    expect(new Set(drawings).size).toBe(marks.length)
  })
  test('a large joint carries its own drawing, finer than that of a row', () => {
    for (const verdict of VERDICTS)
      expect(renderToStaticMarkup(createElement(VerdictMark, { verdict, size: 96 }))).toContain('joint-hatch')
  })
  test('every status has its place in the order', () => {
    expect(STANDING_ORDER.toSorted()).toEqual(STATUSES.toSorted())
  })
})

test('a stamp says department, meaning, name, day and digest, and that it lapsed and why', () => {
  const markup = renderToStaticMarkup(
    createElement(Stamp, {
      department: 'quality',
      meaning: 'Approved',
      name: 'Ines Okafor',
      at: '2026-02-11',
      digest: DIGEST,
      state: 'lapsed',
      because: 'The limit changed.',
    }),
  )
  for (const part of [
    'Quality',
    'Approved, lapsed',
    'Ines Okafor',
    '2026-02-11',
    DIGEST,
    'The limit changed.',
  ]) {
    expect(text(markup)).toContain(part)
  }
})

test('a shortened digest still holds the whole, to copy and as its title', () => {
  const markup = renderToStaticMarkup(createElement(Digest, { value: DIGEST }))
  expect(text(markup)).toBe(DIGEST)
  expect(markup).toContain(`title="${DIGEST}"`)
})

test('a field ties its label, hint and error to its box, and keeps what was typed', () => {
  const markup = renderToStaticMarkup(
    createElement(NumberField, {
      name: 'least',
      label: 'Thickness',
      unit: 'µm',
      hint: 'Between 5 and 10.',
      error: 'Give a number.',
      defaultValue: 'abc',
    }),
  )
  const id = /<input[^>]* id="([^"]+)"/.exec(markup)?.[1]
  expect(markup).toContain(`for="${id}"`)
  const described = /aria-describedby="([^"]+)"/.exec(markup)?.[1]?.split(' ')
  expect(described).toHaveLength(2)
  for (const one of described!) expect(markup).toContain(`<p id="${one}"`)
  expect(markup).toContain('aria-invalid="true"')
  expect(markup).toContain('value="abc"')
})

test('a margin that is not known is said and not drawn', () => {
  const margin = { found: Number.NaN, limit: 5, unit: 'µm', direction: 'at least', guardBand: 1 } as const
  const markup = renderToStaticMarkup(createElement(MarginBar, { margin }))
  expect(markup).not.toContain('<svg')
  expect(text(markup)).toContain('not known')
})

test('only the present place is marked', () => {
  const places = [
    { text: 'Route card', href: '/a' },
    { text: 'Lots', href: '/b', waiting: 2 },
  ]
  const markup = renderToStaticMarkup(createElement(PlaceNav, { label: 'Programme', places, current: '/b' }))
  expect(markup.match(/aria-current="page"/g)).toHaveLength(1)
  expect(markup).toContain('href="/b" aria-current="page"')
  expect(text(markup)).toContain('2 waiting')
})

test('days and moments are those of UTC, wherever the server stands', () => {
  expect(renderToStaticMarkup(createElement(Day, { at: '2026-02-11T23:59:00Z' }))).toBe(
    '<time dateTime="2026-02-11">2026-02-11</time>',
  )
  expect(text(renderToStaticMarkup(createElement(Moment, { at: '2026-02-11T23:59:00Z' })))).toBe(
    '2026-02-11 23:59 UTC',
  )
})

describe('drawings', () => {
  test('name and describe themselves, and carry their numbers', () => {
    const markup = renderToStaticMarkup(
      createElement(ReadingsAgainstLimit, {
        title: 'Tin',
        characteristic: 'Tin thickness',
        unit: 'µm',
        readings: [4.9, 5.2, 6.1],
        limits: { atLeast: 5 },
      }),
    )
    expect(markup).toMatch(/role="img"/)
    expect(markup).toContain('3 readings of tin thickness; 1 outside the limit.')
    expect(text(markup)).toContain('4.9; 5.2; 6.1')
  })
  test('50,000 readings stay a small drawing that keeps the one excursion', () => {
    const readings = Array.from({ length: 50_000 }, (_, at) => ({
      at: at * 60_000,
      value: at === 31_234 ? 99 : 50 + Math.sin(at),
    }))
    const markup = renderToStaticMarkup(
      createElement(LogOverTime, { title: 'Bath', characteristic: 'Temperature', unit: '°C', readings }),
    )
    expect(markup.length).toBeLessThan(60_000)
    expect(text(markup)).toContain('99 °C')
  })
  test('a log without readings is drawn empty', () => {
    const markup = renderToStaticMarkup(
      createElement(LogOverTime, { title: 'Bath', characteristic: 'Temperature', unit: '°C', readings: [] }),
    )
    expect(markup).not.toContain('NaN')
  })
  test('the route counts every stage in words', () => {
    const markup = renderToStaticMarkup(
      createElement(FourStages, {
        title: 'Stages',
        stages: [
          {
            name: 'Control',
            counts: { incomplete: 2, open: 12 },
            gate: 'blocked',
            gateMessage: '14 outstanding',
          },
        ],
      }),
    )
    expect(markup).toContain('Control: 2 incomplete, 12 open; gate blocked, 14 outstanding.')
    expect(text(markup)).toContain('14 outstanding')
  })
})

import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

/**
 * Contrast of the palette, after WCAG 2.2: success criteria 1.4.3 (text, 4.5:1)
 * and 1.4.11 (shapes and lines that carry meaning, 3:1). Formulas: WCAG 2.2,
 * definitions of "relative luminance" and "contrast ratio".
 */
const root = new URL('../../../app/', import.meta.url)
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8')

const tokens = Object.fromEntries(
  [...read('globals.css').matchAll(/--color-([a-z-]+):\s*(#[0-9a-f]{6});/g)].map(
    ([, name, hex]) => [name!, hex!] as const,
  ),
)

const TEXTS = ['ink', 'ink-soft', 'copper', 'mask', 'tin', 'rosin', 'carmine', 'blueprint']
const GROUNDS = ['paper', 'sheet', 'tray', 'field']
const WASHES = ['copper-wash', 'mask-wash', 'tin-wash', 'rosin-wash', 'carmine-wash', 'blueprint-wash']
const SHAPES = [
  'rule-strong',
  'copper-bright',
  'mask-bright',
  'tin-bright',
  'rosin-bright',
  'carmine-bright',
  'blueprint-bright',
]
/** Cut materials: always outlined and hatched in ink, never alone. */
const MATERIALS = ['laminate', 'solder', 'lead']
/** Hairlines that only decorate: nothing is lost with them (WCAG 2.2, 1.4.11 exempts them). */
const DECORATIVE = ['rule']

function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((share) => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4)) as [
    number,
    number,
    number,
  ]
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number]
  return (light + 0.05) / (dark + 0.05)
}

const between = (one: string, other: string): number => contrast(tokens[one]!, tokens[other]!)
const pairs = (ones: readonly string[], others: readonly string[]) =>
  ones.flatMap((one) => others.map((other) => [one, other] as const))

describe('the formula', () => {
  // Black on white is 21:1 by WCAG's definition; #767676, 4.54:1, is the lightest grey that passes on white (from memory).
  test('gives the known 21 and 4.54', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6)
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
  })
})

test('every colour token has a role here, and every role a token', () => {
  const roles = [...TEXTS, ...GROUNDS, ...WASHES, ...SHAPES, ...MATERIALS, ...DECORATIVE]
  expect(Object.keys(tokens).sort()).toEqual(roles.sort())
})

test.each(pairs(TEXTS, [...GROUNDS, ...WASHES]))('text in %s reads on %s', (text, ground) => {
  expect(between(text, ground)).toBeGreaterThanOrEqual(4.5)
})

test.each(pairs(SHAPES, [...GROUNDS, ...WASHES]))('a shape in %s shows on %s', (shape, ground) => {
  expect(between(shape, ground)).toBeGreaterThanOrEqual(3)
})

test.each(pairs(['ink'], MATERIALS))('outlines in %s show on cut %s', (line, material) => {
  expect(between(line, material)).toBeGreaterThanOrEqual(3)
})

test.each(pairs(['ink'], ['copper-bright']))('outlines in %s show on lands of %s', (line, land) => {
  expect(between(line, land)).toBeGreaterThanOrEqual(3)
})

describe('every rule that sets text and ground together', () => {
  const files = ['ui/base.css', 'ui/sheet.css', 'ui/table.css', 'ui/form.css', 'ui/marks.css', 'ui/notes.css']
  const rules = files.flatMap((file) =>
    [...read(file).matchAll(/([^{}]+)\{([^{}]*)\}/g)].flatMap(([, selector, body]) => {
      const text = /(?:^|[;\s])color:\s*var\(--color-([a-z-]+)\)/.exec(body!)?.[1]
      const ground = /background(?:-color)?:\s*var\(--color-([a-z-]+)\)/.exec(body!)?.[1]
      return text && ground ? [[selector!.trim().split('\n').at(-1)!, text, ground] as const] : []
    }),
  )

  test('are found', () => {
    expect(rules.length).toBeGreaterThan(8)
  })

  test.each(rules)('%s: %s on %s', (_, text, ground) => {
    expect(between(text, ground)).toBeGreaterThanOrEqual(4.5)
  })
})

import { parse } from 'csv-parse/sync'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/trail/csv.json'
import { csvCell, csvLine } from '@/shared/trail/csv-cell'

describe('text that a spreadsheet would take for a formula', () => {
  const listed = reference.firstCharacters.flatMap(({ source, characters }) =>
    characters.map((character) => ({ source, character })),
  )
  test.each(listed)('starting with $character ($source)', ({ character }) => {
    expect(csvCell(`${character}1`)).toBe(`"'${character}1"`)
  })

  test.each([...reference.formulas, ...reference.fullWidth.cells])('%j is kept as text', (formula) => {
    expect(csvCell(formula)).toBe(`"'${formula.replaceAll('"', '""')}"`)
  })

  test('blanks in front do not hide it', () => {
    expect(csvCell('  =1+1')).toBe(`"'  =1+1"`)
  })

  test.each(reference.quotesOnly)('%j stays one cell', (text) => {
    expect(csvCell(text)).toBe('"a"",=1+1,""b"')
  })
})

test('a negative number stays a number; the same as text does not', () => {
  expect(csvLine([-1.5, '-1.5', 0, 1e-7])).toBe(`-1.5,"'-1.5",0,1e-7\r\n`)
})

test('empty, true and false', () => {
  expect(csvLine([null, undefined, '', true, false])).toBe(',,,true,false\r\n')
})

test.each([Number.NaN, Infinity, -Infinity])('%s is refused', (number) => {
  expect(() => csvCell(number)).toThrow(RangeError)
})

test.each(reference.records)('RFC 4180 section 2 rule $rule: the cells read back', ({ records }) => {
  expect(parse(records.map(csvLine).join(''))).toEqual(records)
})

test('any text comes back through a CSV reader, with an apostrophe in front where it might be a formula', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: 'binary' }), { minLength: 1 }), (cells) => {
      const written = cells.map((cell) => Buffer.from(cell, 'utf8').toString('utf8'))
      const [read] = parse(`${csvLine(['x', ...written])}`, { record_delimiter: '\r\n' }) as string[][]
      expect(read).toHaveLength(written.length + 1)
      for (const [index, cell] of written.entries()) expect([cell, `'${cell}`]).toContain(read![index + 1])
    }),
  )
})

test('no cell of text begins, once unquoted, with a character that starts a formula', () => {
  fc.assert(
    fc.property(fc.constantFrom(...'=+-@\t\r\n\0'), fc.string(), (first, rest) => {
      expect(parse(csvLine([first + rest, 'x']), { record_delimiter: '\r\n' })[0]![0]).toMatch(/^'/)
    }),
  )
})

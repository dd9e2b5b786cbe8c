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
    const [[read]] = parse(csvCell(formula), { record_delimiter: '\r\n' }) as [[string]]
    expect(read).toMatch(/^'/)
    expect(read.replaceAll("'", '')).toBe(formula)
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
      for (const [index, cell] of written.entries()) {
        expect(read![index + 1]!.replaceAll("'", '')).toBe(cell.replaceAll("'", ''))
      }
    }),
  )
})

/** Quotes hold a cell together only from its first character on: RFC 4180 section 2, rule 5. */
describe('split at another separator than the comma', () => {
  const BEGINS_A_FORMULA = /^[\s"]*[=+\-@\uff1d\uff0b\uff0d\uff20]/

  test.each([
    ['a;=1+1', `"a;'=1+1"`],
    ['a\t=1+1', `"a\t'=1+1"`],
    ['a; \t@SUM(A1)', `"a; \t'@SUM(A1)"`],
    ['a;"=1+1"', `"a;""'=1+1"""`],
    ['a\n-2+3', `"a\n'-2+3"`],
    ['a;\uff1d1', `"a;'\uff1d1"`],
  ])('%j has an apostrophe before what would begin a cell there', (text, cell) => {
    expect(csvCell(text)).toBe(cell)
  })

  test.each(['a; b-c', '1;2', 'a=b;c', "a;'=1"])('%j says nothing there, and stays as it is', (text) => {
    expect(csvCell(text)).toBe(`"${text}"`.replace(/^"([^;]*)"$/, '$1'))
  })

  test.each([';', '\t'])('no part of any text begins a formula when a reader splits at %j', (delimiter) => {
    const unit = fc.constantFrom(...`=+-@;,\t\r\n "'a1\u00a0`)
    fc.assert(
      fc.property(fc.array(fc.string({ unit }), { minLength: 1, maxLength: 4 }), (cells) => {
        const text = csvLine(['x', ...cells, 'y'])
        // A reader that heeds quotes splits at fewer places than this one.
        const rows = parse(text, { delimiter, quote: false, relax_column_count: true }) as string[][]
        for (const part of rows.flat()) expect(part).not.toMatch(BEGINS_A_FORMULA)
      }),
      { numRuns: 500 },
    )
  })
})

test('no cell of text begins, once unquoted, with a character that starts a formula', () => {
  fc.assert(
    fc.property(fc.constantFrom(...'=+-@\t\r\n\0'), fc.string(), (first, rest) => {
      expect(parse(csvLine([first + rest, 'x']), { record_delimiter: '\r\n' })[0]![0]).toMatch(/^'/)
    }),
  )
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/trail/csv.json'
import {
  parseReadings,
  type ImportOptions,
  type ImportProgress,
  type ReadingsImport,
} from '@/lib/readings/parse-readings'
import { previewReadings } from '@/lib/readings/preview-readings'
import { INSTANT_FIELD, type ReadingField } from '@/lib/readings/reading-field'
import { csvLine } from '@/shared/trail/csv-cell'
import { NEUTRAL_WORKS } from '@/shared/quantity/works'

const DENSITY: ReadingField = {
  name: 'densityGPerMl',
  label: 'Density',
  kind: 'number',
  min: 0.5,
  max: 1.5,
  unit: 'g/ml',
  required: true,
}
const NOTE: ReadingField = { name: 'note', label: 'Note', kind: 'text', maxLength: 20, required: false }
const FIELDS = [INSTANT_FIELD, DENSITY, NOTE]

const importOf = (
  content: string | Uint8Array,
  options?: ImportOptions,
  fields: readonly ReadingField[] = FIELDS,
): Promise<ReadingsImport> =>
  parseReadings(typeof content === 'string' ? Buffer.from(content) : content, fields, options)

async function messagesOf(
  content: string | Uint8Array,
  options?: ImportOptions,
  fields?: readonly ReadingField[],
): Promise<string[]> {
  const result = await importOf(content, options, fields)
  if (result.ok) throw new Error('The import did not fail.')
  return result.errors.map(({ message }) => message)
}

const at = (text: string): number => Date.parse(text)

describe('files that are right', () => {
  const expected = {
    count: 2,
    columns: {
      at: [at('2026-03-04T10:00:00Z'), at('2026-03-04T10:05:00Z')],
      densityGPerMl: [0.823, 0.82],
      note: ['after thinner', null],
    },
  }
  test.each([
    ['commas', 'Time,Density,Note\n2026-03-04 10:00,0.823,after thinner\n2026-03-04 10:05,0.82,\n'],
    [
      'semicolons and decimal commas',
      'Time;Density;Note\n2026-03-04 10:00;0,823;after thinner\n2026-03-04 10:05;0,82;\n',
    ],
    ['tabs', 'Time\tDensity\tNote\n2026-03-04 10:00\t0.823\tafter thinner\n2026-03-04 10:05\t0.82\t\n'],
    [
      'CRLF, quotes and no last line end',
      '"Time","Density","Note"\r\n"2026-03-04 10:00","0.823","after thinner"\r\n2026-03-04 10:05,0.82,""',
    ],
    [
      'carriage returns alone',
      'Time,Density,Note\r2026-03-04 10:00,0.823,after thinner\r2026-03-04 10:05,0.82,\r',
    ],
    [
      'a byte order mark',
      '\ufeffTime,Density,Note\n2026-03-04 10:00,0.823,after thinner\n2026-03-04 10:05,0.82,\n',
    ],
    [
      'other headings, order and columns',
      'Nr;Note;Density (g/ml);Timestamp\n1;after thinner;0,823;2026-03-04T11:00:00+01:00\n2;;0,82;2026-03-04T10:05:00Z\n',
    ],
    [
      'blank lines and blanks around values',
      '\n  Time , Density,Note\n\n 2026-03-04 10:00 , 0.823 ,after thinner\n   \n,,\n2026-03-04 10:05,0.82,\n\n',
    ],
    [
      'a separator at the end of each line',
      'Time;Density;Note;\n2026-03-04 10:00;0,823;after thinner;\n2026-03-04 10:05;0,82;;\n',
    ],
  ])('%s', async (_, content) => {
    const result = await importOf(content)
    expect(result).toMatchObject({ ok: true, readings: expected })
  })

  test('says how it was read', async () => {
    const result = await importOf('Nr;Density;Time\n1;0,8;2026-03-04 10:00\n')
    expect(result).toMatchObject({
      form: { delimiter: ';', decimal: ',' },
      mapping: { at: 'Time', densityGPerMl: 'Density' },
      ignoredHeadings: ['Nr'],
    })
  })

  test('a mapping given by a person is followed', async () => {
    const content = 'Time,Density,ρ\n2026-03-04 10:00,wrong,0.9\n'
    const result = await importOf(content, { mapping: { at: 'Time', densityGPerMl: 'ρ' } })
    expect(result).toMatchObject({
      ok: true,
      readings: { columns: { densityGPerMl: [0.9] } },
      ignoredHeadings: ['Density'],
    })
  })

  test('a value over several lines counts its lines, so that later errors name the right one', async () => {
    const content = 'Time,Density,Note\n2026-03-04 10:00,0.8,"two\nlines"\n2026-03-04 10:05,x,\n'
    expect(await messagesOf(content)).toEqual([
      expect.stringContaining('Line 4, column 2 (Density): found "x"'),
    ])
  })

  test.each(reference.records)('RFC 4180 section 2 rule $rule', async ({ text, records }) => {
    const names = ['a', 'b', 'c']
    const fields = names.map((name): ReadingField => ({ name, label: name, kind: 'text', required: false }))
    const result = await importOf(`a,b,c\r\n${text}`, {}, fields)
    const columns = Object.fromEntries(
      names.map((name, index) => [name, records.map((record) => record[index])]),
    )
    expect(result).toMatchObject({ ok: true, readings: { count: records.length, columns } })
  })

  test('arriving in pieces of any size gives the same', async () => {
    const lines = Array.from({ length: 3_000 }, (_, row) => `2026-03-04 10:00,0.8,"n° ${row}, ""ü"""\r\n`)
    const content = Buffer.from(`Time,Density,Note\r\n${lines.join('')}`)
    const whole = await importOf(content)
    expect(whole).toMatchObject({ ok: true, readings: { count: 3_000 } })
    for (const size of [97, 4096, 100_000]) {
      const pieces = (async function* () {
        for (let from = 0; from < content.length; from += size) yield content.subarray(from, from + size)
      })()
      expect(await parseReadings(pieces, FIELDS)).toEqual(whole)
    }
  })
})

describe('all errors are found, each with line, column and what was expected', () => {
  test('several cells', async () => {
    const content =
      'Time,Density,Note\n2026-03-04 10:00,abc,\nyesterday,2.5,far too long to be a note\n,0.8,\n2026-03-04 10:00,,\n'
    const result = await importOf(content)
    expect(result).toMatchObject({ ok: false, errorCount: 6 })
    expect(await messagesOf(content)).toEqual([
      'Line 2, column 2 (Density): found "abc", expected was a number such as 0.82 from 0.5 to 1.5 g/ml.',
      'Line 3, column 1 (Time): found "yesterday", expected was a time as 2026-03-04T10:11:12Z, or 2026-03-04 10:11 in UTC.',
      'Line 3, column 2 (Density): found "2.5", expected was a number such as 0.82 from 0.5 to 1.5 g/ml.',
      'Line 3, column 3 (Note): found "far too long to be a note", expected was text of 20 characters at most.',
      'Line 4, column 1 (Time): found nothing, expected was a time as 2026-03-04T10:11:12Z, or 2026-03-04 10:11 in UTC.',
      'Line 5, column 2 (Density): found nothing, expected was a number such as 0.82 from 0.5 to 1.5 g/ml.',
    ])
  })

  test('one wrong cell among many rows takes all away', async () => {
    const rows = Array.from(
      { length: 20_000 },
      (_, row) => `2026-03-04 10:00,${row === 19_999 ? 'x' : '0.8'},\n`,
    )
    const result = await importOf(`Time,Density,Note\n${rows.join('')}`)
    expect(result).toEqual({
      ok: false,
      errorCount: 1,
      errors: [expect.objectContaining({ line: 20_001, column: 2 })],
    })
  })

  test('200 are listed, all are counted', async () => {
    const result = await importOf(`Time,Density\n${'2026-03-04 10:00,x\n'.repeat(5_000)}`)
    expect(result).toMatchObject({ ok: false, errorCount: 5_000 })
    expect(!result.ok && result.errors.length).toBe(200)
    expect(!result.ok && result.errors.at(-1)?.line).toBe(201)
  })

  test('too many or too few values', async () => {
    const content = 'Time,Density\n2026-03-04 10:00,0,82\n2026-03-04 10:00\n2026-03-04 10:00,0.8,,\n'
    expect(await messagesOf(content)).toEqual([
      'Line 2: 3 values, but there are 2 headings. If numbers have a decimal comma, separate the columns by semicolons.',
      'Line 3: 1 value, but there are 2 headings.',
    ])
  })

  test('more readings than are taken at once', async () => {
    const content = `Time,Density\n${'2026-03-04 10:00,0.8\n'.repeat(4)}`
    expect(await importOf(content, { maxRows: 4 })).toMatchObject({ ok: true })
    expect(await messagesOf(content, { maxRows: 3 })).toEqual([
      'Line 5: more than 3 readings. Import them in several files.',
    ])
  })
})

describe('headings', () => {
  test('a column that is needed and not there is named, with those that are', async () => {
    expect(await messagesOf('Zeit;Dichte\n1;2\n')).toEqual([
      'Line 1: no column was found for Time. The columns, separated by a semicolon, are: "Zeit", "Dichte".',
      'Line 1: no column was found for Density. The columns, separated by a semicolon, are: "Zeit", "Dichte".',
    ])
  })
  test('a mapping to a column that is not there', async () => {
    const messages = await messagesOf('Time,Density\n2026-03-04 10:00,0.8\n', {
      mapping: { at: 'Time', densityGPerMl: 'Dichte' },
    })
    expect(messages).toEqual([expect.stringContaining('there is no column "Dichte" for Density')])
  })
  test('two columns of one name', async () => {
    expect(await messagesOf('Time,Density,Density\n2026-03-04 10:00,0.8,0.9\n')).toEqual([
      'Line 1: two columns are called "Density"; Density can be read from one only. Rename one.',
    ])
  })
  test('headings without readings, and nothing at all', async () => {
    expect(await messagesOf('Time,Density\n\n')).toEqual([
      'Line 1: there are headings, but no readings below them.',
    ])
    for (const nothing of ['', '\ufeff', '\n \n']) {
      expect(await messagesOf(nothing)).toEqual([
        'Line 1: the file is empty; a line of headings was expected.',
      ])
    }
  })
})

describe('hostile and broken files get a clear message, soon', () => {
  test('a quotation that never closes is found where it opens, and the lines behind it are read', async () => {
    const rows = '2026-03-04 10:00,0.8,\n'.repeat(30_000)
    const content = `Time,Density,Note\n2026-03-04 10:00,0.8,"open\n${rows}2026-03-04 10:00,x,\n`
    expect(await messagesOf(content)).toEqual([
      'Line 2: a quotation mark (") opens here and is not closed. Close it, or double it if it belongs to the text.',
      expect.stringContaining('Line 30003, column 2'),
    ])
  })
  test('one that closes far below', async () => {
    const content =
      'Time,Density,Note\n2026-03-04 10:00,0.8,"open\n2026-03-04 10:00,0.8,"note"\n2026-03-04 10:00,x,\n'
    expect(await messagesOf(content)).toEqual([
      expect.stringContaining('Line 2: a quotation mark (") opens here and is not closed'),
      expect.stringContaining('Line 4, column 2'),
    ])
  })
  test('an inch mark in each line: every line is named until it is clear', async () => {
    const content = `Time,Density,Note\n${'2026-03-04 10:00,0.8,5" reel\n'.repeat(150)}`
    const messages = await messagesOf(content)
    expect(messages).toHaveLength(101)
    expect(messages[0]).toBe(
      'Line 2: a quotation mark (") stands inside a value. Put the value in quotation marks and double those that belong to it.',
    )
    expect(messages[99]).toContain('Line 101:')
    expect(messages[100]).toBe('Line 101: reading stopped here: 100 lines have misplaced quotation marks.')
  })
  test('quotes wrong in the headings: a reading is not taken for them', async () => {
    expect(await messagesOf('Time,Den"sity\n2026-03-04 10:00,0.8\n')).toEqual([
      expect.stringContaining('Line 1: a quotation mark (") stands inside a value'),
    ])
  })
  test('nothing but quotation marks', async () => {
    const start = performance.now()
    const messages = await messagesOf('"'.repeat(2_000_001))
    expect(messages.length).toBeGreaterThan(0)
    expect(performance.now() - start).toBeLessThan(5_000)
  })
  test('a line of two megabytes', async () => {
    const long = 'x'.repeat(2_000_000)
    expect(await messagesOf(`Time,Density\n2026-03-04 10:00,0.8\n${long}\n2026-03-04 10:00,y\n`)).toEqual([
      'Line 3: longer than 64 KiB, which no reading is. Is this a CSV file?',
      expect.stringContaining('Line 4, column 2 (Density): found "y"'),
    ])
    expect(await messagesOf(long)).toEqual([
      'Line 1: longer than 64 KiB, which no reading is. Is this a CSV file?',
    ])
    expect(await messagesOf(`Time,Density\n2026-03-04 10:00,${'9'.repeat(50_000)}\n`)).toEqual([
      `Line 2, column 2 (Density): found "${'9'.repeat(40)}…", expected was a number such as 0.82 from 0.5 to 1.5 g/ml.`,
    ])
  })
  test('a NUL byte', async () => {
    expect(await messagesOf('Time,Density\n2026-03-04 10:00,0.8\n2026-03-04 10:00,\0\n')).toEqual([
      expect.stringContaining('Line 3: holds a NUL byte'),
    ])
  })
  test('Latin-1, with the line and the byte', async () => {
    const content = Buffer.from(
      'Time;Density;Note\n2026-03-04 10:00;0,8;\n2026-03-04 10:00;0,8;bei 20 \xb0C\n',
      'latin1',
    )
    expect(await messagesOf(content)).toEqual([
      'Line 3: has the byte B0 (hexadecimal), which is not UTF-8. ' +
        'The file seems to be in Latin-1 (Windows-1252), where it means "°". Save it as UTF-8.',
    ])
    expect(await messagesOf(Buffer.from('Gr\xf6\xdfe;x\n', 'latin1'))).toEqual([
      expect.stringContaining('the byte F6'),
    ])
  })
  test('UTF-16, with a mark and without', async () => {
    expect(await messagesOf(Buffer.from('\ufeffTime,Density\n', 'utf16le'))).toEqual([
      'Line 1: the file is in UTF-16. Save it as UTF-8.',
    ])
    expect(await messagesOf(Buffer.from('Time,Density\n', 'utf16le'))).toEqual([
      expect.stringContaining('perhaps UTF-16'),
    ])
  })
  test('headings called like the parts of an object', async () => {
    const fields: ReadingField[] = [{ name: 'density', label: '__proto__', kind: 'number', required: true }]
    expect(await importOf('__proto__,constructor\n0.8,1\n', {}, fields)).toMatchObject({
      ok: true,
      readings: { columns: { density: [0.8] } },
    })
  })
})

describe('while it runs', () => {
  const content = `Time,Density,Note\n${'2026-03-04 10:00,0.8,\n'.repeat(60_000)}`
  test('progress rises to the whole file', async () => {
    const seen: ImportProgress[] = []
    await importOf(content, { onProgress: (progress) => seen.push(progress) })
    expect(seen.length).toBeGreaterThan(5)
    expect(seen.map(({ rows }) => rows)).toEqual(
      seen.map(({ rows }) => rows).sort((one, other) => one - other),
    )
    expect(seen.at(-1)).toEqual({ bytesRead: Buffer.byteLength(content), rows: 60_000, errorCount: 0 })
  })
  test('others get their turn', async () => {
    let turns = 0
    const other = setInterval(() => (turns += 1), 0)
    await importOf(content)
    clearInterval(other)
    expect(turns).toBeGreaterThan(3)
  })
  test('it can be stopped', async () => {
    const stop = new AbortController()
    const stopped = importOf(content, {
      signal: stop.signal,
      onProgress: () => stop.abort(new Error('enough')),
    })
    await expect(stopped).rejects.toThrow('enough')
  })
})

describe('a look at the start of a file', () => {
  test('headings, sample and suggestion, the cut last line left out', () => {
    const start = Buffer.from(
      '\ufeffTime;Density\n2026-03-04 10:00;0,8\n2026-03-04 10:01;0,81\n2026-03-04 10',
    )
    expect(previewReadings(start, FIELDS, NEUTRAL_WORKS)).toEqual({
      form: { delimiter: ';', decimal: ',', dates: 'year first', timeZone: 'UTC' },
      headings: ['Time', 'Density'],
      sampleRows: [
        ['2026-03-04 10:00', '0,8'],
        ['2026-03-04 10:01', '0,81'],
      ],
      suggested: { at: 'Time', densityGPerMl: 'Density' },
    })
  })
  test('what cannot be read shows nothing', () => {
    expect(previewReadings(Buffer.from('Gr\xf6\xdfe\n', 'latin1'), FIELDS, NEUTRAL_WORKS)).toBeUndefined()
    expect(previewReadings(Buffer.alloc(0), FIELDS, NEUTRAL_WORKS)).toBeUndefined()
  })
})

const rowsArb = fc.array(
  fc.record({
    ms: fc.integer({ min: 0, max: 4_102_444_800_000 }),
    density: fc.double({ min: 0.5, max: 1.5, noNaN: true }),
    // A letter in front, because exported text that might be a formula is changed on purpose.
    note: fc.string({ unit: 'grapheme', maxLength: 8 }).map((text) => `n${text}`.trim()),
  }),
  { minLength: 1, maxLength: 30 },
)

test('law: what was written as CSV is read as it was', async () => {
  const fields = [INSTANT_FIELD, DENSITY, { ...NOTE, maxLength: 500 } as ReadingField]
  await fc.assert(
    fc.asyncProperty(rowsArb, async (rows) => {
      const lines = rows.map(({ ms, density, note }) => [new Date(ms).toISOString(), density, note])
      const content = [['Time', 'Density', 'Note'], ...lines].map(csvLine).join('')
      const columns = {
        at: rows.map(({ ms }) => ms),
        densityGPerMl: rows.map(({ density }) => density),
        note: rows.map(({ note }) => note),
      }
      const result = await importOf(content, {}, fields)
      expect(result).toMatchObject({ ok: true, readings: { count: rows.length, columns } })
    }),
  )
})

test('a quotation over lines that end in CR LF does not shift the line of a later fault', async () => {
  const content = 'Time,Density,Note\r\n2026-03-04 10:00,0.8,"a\r\nb\r\nc"\r\n2026-03-04 10:05,0.8,"x" y\r\n'
  const result = await importOf(content)
  expect(result.ok ? [] : result.errors.map(({ line }) => line)).toEqual([5])
})

test('law: any bytes give readings or errors, never an exception, and errors lie within the file', async () => {
  const bits = fc.oneof(
    fc.string(),
    fc.constantFrom('"', ',', ';', '\n', '\r\n', '\r', '""', '0.8', '2026-03-04 10:00', '\t'),
  )
  await fc.assert(
    fc.asyncProperty(
      fc.array(bits, { maxLength: 60 }),
      fc.uint8Array({ maxLength: 4 }),
      async (parts, tail) => {
        const content = Buffer.concat([Buffer.from(`Time,Density\n${parts.join('')}`), tail])
        const result = await importOf(content)
        if (result.ok) return
        const lines = content.toString('latin1').split(/\r\n|\n|\r/).length
        expect(result.errorCount).toBeGreaterThan(0)
        for (const { line } of result.errors) expect(line).toBeLessThanOrEqual(lines)
      },
    ),
    { examples: [[['"', '\r\n', '"'], Uint8Array.from([1])]] },
  )
})

import fc from 'fast-check'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { decideMediaType } from '@/lib/evidence/media-type'
import { Refused } from '@/shared/refused'
import * as sample from './sample-files'

let folder: string
let files = 0
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'media-type-'))
})
afterAll(() => rm(folder, { recursive: true }))

async function mediaTypeOf(content: Buffer | string, fileName?: string): Promise<string> {
  const bytes = Buffer.from(content as string)
  const path = join(folder, String((files += 1)))
  await writeFile(path, bytes)
  return decideMediaType(path, bytes.length, fileName)
}

describe('what is kept, by its content', () => {
  test.each<[string, Buffer | string, string]>([
    ['report.pdf', sample.pdf, 'application/pdf'],
    ['section.PNG', sample.png, 'image/png'],
    ['section.jpg', sample.jpeg, 'image/jpeg'],
    ['section.jpeg', sample.jpeg, 'image/jpeg'],
    ['section.tif', sample.tiff, 'image/tiff'],
    ['section.webp', sample.webp, 'image/webp'],
    ['sheet.xlsx', sample.xlsx, 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'],
    ['sheet.ods', sample.ods, 'application/vnd.oasis.opendocument.spreadsheet'],
    ['text.docx', sample.docx, 'application/vnd.openxmlformats-officedocument.wordprocessingml.document'],
    ['layers.zip', sample.zip, 'application/zip'],
    ['top.gbr', sample.gerber, 'text/plain'],
    ['top.GTL', sample.gerber, 'text/plain'],
    ['holes.drl', sample.excellon, 'text/plain'],
    ['holes.drl', 'T1C0.800\nT1\nX10Y10\n', 'text/plain'],
    ['readings.csv', sample.csv, 'text/csv'],
    ['readings.csv', 'one column\n', 'text/csv'],
    ['readings.txt', sample.csv, 'text/plain'],
    ['curve.json', '{"force": [1, 2]}', 'application/json'],
    ['machine.log', '[2026-03-04] wave started\n', 'text/plain'],
    ['note.txt', 'Bath at 250 °C.\n', 'text/plain'],
    ['note.txt', '\ufeffwith a byte order mark', 'text/plain'],
    ['limits.txt', '<0.1 µg/cm² met\n<1.56 µg/cm² asked\n', 'text/plain'],
    ['BMP-like.csv', 'BM;1\nBM;2\n', 'text/csv'],
  ])('%s', async (name, content, mediaType) => {
    expect(await mediaTypeOf(content, name)).toBe(mediaType)
  })

  test('without a name or an ending, the content alone decides', async () => {
    expect(await mediaTypeOf(sample.png)).toBe('image/png')
    expect(await mediaTypeOf(sample.png, 'photo')).toBe('image/png')
    expect(await mediaTypeOf(sample.csv)).toBe('text/csv')
    expect(await mediaTypeOf('some words\n')).toBe('text/plain')
  })

  test('a character that two pieces of the file share is no fault', async () => {
    expect(await mediaTypeOf(`${'x'.repeat(65_535)}°${'y'.repeat(10)}`, 'long.txt')).toBe('text/plain')
  })
})

describe('a name that disagrees with the content is refused, and both are named', () => {
  test.each<[string, Buffer | string, RegExp]>([
    ['report.pdf', sample.png, /"report\.pdf" is named as a PDF document, but its content is a PNG picture/],
    ['photo.png', sample.jpeg, /named as a PNG picture, but its content is a JPEG picture/],
    ['sheet.xlsx', sample.zip, /named as a spreadsheet \(XLSX\), but its content is a ZIP archive/],
    ['sheet.xlsx', sample.docx, /XLSX.*DOCX/],
    ['readings.csv', sample.pdf, /CSV.*PDF/],
    ['readings.csv', '{"a": 1}', /CSV.*JSON/],
    ['curve.json', '{"a": 1', /JSON.*plain text/],
    ['top.gbr', 'just words\n', /Gerber.*plain text/],
    ['holes.drl', sample.gerber, /Excellon.*Gerber/],
    ['note.txt', sample.png, /named as plain text, but its content is a PNG/],
  ])('%s', async (name, content, message) => {
    await expect(mediaTypeOf(content, name)).rejects.toThrow(message)
    await expect(mediaTypeOf(content, name)).rejects.toBeInstanceOf(Refused)
  })
})

describe('what is not kept is refused, with the reason', () => {
  test.each<[string, Buffer | string, RegExp]>([
    ['setup.exe', sample.program, /not kept as evidence/],
    ['photo.png', sample.program, /application\/x-msdownload/],
    ['tool', sample.elf, /x-elf/],
    ['sheet.xlsx', sample.macroSheet, /macro/i],
    ['run.txt', '#!/bin/sh\nrm -rf x\n', /is a script/],
    ['run.txt', '<?php echo 1;', /is a script/],
    ['page.txt', '<!DOCTYPE html><p>x', /web page/],
    ['page.csv', '  <script>alert(1)</script>', /web page/],
    ['page.txt', '<!-- a --><!-- b -->\n<html>', /web page/],
    ['drawing.txt', '<svg xmlns="http://www.w3.org/2000/svg" onload="x()"/>', /SVG/],
    ['drawing.txt', '\ufeff<?xml version="1.0"?>\n<!-- c -->\n<svg:svg/>', /SVG/],
    ['drawing.svg', '<svg/>', /SVG/],
    ['data.txt', '<?xml version="1.0"?><data/>', /XML/],
    ['page.txt', '%!PS-Adobe-3.0', /PostScript/],
    ['note.txt', '{\\rtf1 x}', /RTF/],
    ['note.exe', 'words', /ends in "\.exe"/],
    ['note.html', 'words', /ends in "\.html"/],
    ['noise.bin', Buffer.from([1, 2, 3, 4, 5]), /no kind that is known here/],
    ['nul.txt', 'a\0b', /no kind that is known here/],
    ['machine.csv', Buffer.from('temperature [\xb0C]\n250\n', 'latin1'), /not in UTF-8.*Save it as UTF-8/],
    ['machine.csv', Buffer.from('\ufefftime,x\n', 'utf16le'), /UTF-16/],
    ['cut.txt', Buffer.from([0x61, 0xc2]), /not in UTF-8/],
  ])('%s: %s', async (name, content, message) => {
    await expect(mediaTypeOf(content, name)).rejects.toThrow(message)
    await expect(mediaTypeOf(content, name)).rejects.toBeInstanceOf(Refused)
  })
})

test('many comments in front cost no more than their length', async () => {
  const start = performance.now()
  await expect(mediaTypeOf(`${'<!---->'.repeat(9_000)}x`, 'a.txt')).rejects.toBeInstanceOf(Refused)
  expect(await mediaTypeOf(`${'; a\r\n'.repeat(12_000)}x`, 'a.txt')).toBe('text/plain')
  expect(performance.now() - start).toBeLessThan(2_000)
})

test('law: any bytes give a media type or a refusal, never another error', async () => {
  const beginnings = [
    sample.png,
    sample.zip,
    sample.pdf,
    sample.tiff,
    sample.webp,
    sample.xlsx,
    Buffer.alloc(0),
  ]
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...beginnings),
      fc.nat(200),
      fc.uint8Array({ maxLength: 300 }),
      async (sampleBytes, cut, tail) => {
        const content = Buffer.concat([sampleBytes.subarray(0, cut), tail])
        const outcome = await mediaTypeOf(content).catch((error: unknown) => error)
        expect(typeof outcome === 'string' || outcome instanceof Refused).toBe(true)
      },
    ),
    { numRuns: 150 },
  )
})

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { readBoardFile } from '@/shared/board/read-files'
import { readGerber } from '@/shared/board/gerber/read-gerber'
import { textsOf } from './drawn-board'
import { JUDGED_BOARD } from './judged-board'
import { besideAnother, type BesideAnother } from './raster/layer-beside-another'
import { DRAWN_LAYERS } from './raster/drawn-layers'
import { otherRendererIsHere } from './raster/other-renderer'

/*
 * What is read of a layer beside what gerbv draws of the same file, pixel by pixel of 42 µm. A pixel is covered for us
 * where its middle is, for the other where half of it is. Pixels that an edge of something drawn passes through or beside,
 * buried edges too, may be either: there the other program rounds widths and places to its pixels. All others have to
 * agree, but for a thousandth of the covered area; and over all pixels, those on edges counted, the edges may not lie off
 * by more than half a pixel on average.
 */
const OFF_EDGES_MAX = 0.001
const EDGE_SHIFT_MAX = 0.5

const here = otherRendererIsHere()
vi.setConfig({ testTimeout: 180_000 })

test('gerbv is here, where everything is to be tried', () => {
  // .ci/run brings it; elsewhere: apt-get install -y gerbv.
  expect(here || process.env['CI'] === undefined).toBe(true)
})

function expectAlike(found: BesideAnother | undefined): void {
  if (!found) return
  expect(found.area).toBeGreaterThan(0)
  expect(found.offEdges).toBeLessThan(OFF_EDGES_MAX)
  expect(Math.abs(found.edgeShift)).toBeLessThan(EDGE_SHIFT_MAX)
}

describe.skipIf(!here)('layers of our own', () => {
  test.each(Object.entries(DRAWN_LAYERS))('%s', (_, text) => {
    expectAlike(besideAnother(text, readGerber(text).drawn))
  })
  const board = Object.entries(textsOf(JUDGED_BOARD)).filter(([name]) => name.endsWith('.gbr'))
  test.each(board)('the board that is judged: %s', (_, text) => {
    expectAlike(besideAnother(text, readGerber(text).drawn))
  })
  test('tells what is left out, and what lies elsewhere', () => {
    const [text] = Object.values(DRAWN_LAYERS)
    const { drawn } = readGerber(text!)
    expect(besideAnother(text!, drawn.toSpliced(3, 1))!.offEdges).toBeGreaterThan(OFF_EDGES_MAX)
    const elsewhere = text!.replaceAll(/X(\d+)Y/g, (_, x: string) => `X${Number(x) + 100_000}Y`)
    expect(besideAnother(elsewhere, drawn)!.offEdges).toBeGreaterThan(OFF_EDGES_MAX)
  })
})

/** Public boards beside the project, as `real-boards.test.ts` finds them. */
const BOARDS = join(import.meta.dirname, '../../../../shared/boards')
const SHOWN = ['copper', 'mask', 'paste', 'legend']
const names = existsSync(BOARDS)
  ? readdirSync(BOARDS).filter((name) => existsSync(join(BOARDS, name, 'files')))
  : []

describe.skipIf(!here)('boards of others', () => {
  test.skipIf(names.length > 0)('are not beside the project: none was tried', () => {
    expect(names).toEqual([])
  })
  test.each(names)('%s: every layer of copper, mask, paste and legend', (name) => {
    const folder = join(BOARDS, name, 'files')
    const layers = readdirSync(folder).flatMap((file) => {
      const text = readFileSync(join(folder, file), 'latin1')
      const read = readBoardFile({ name: file, text })
      return read.format === 'gerber' && SHOWN.includes(read.proposed.role.kind)
        ? [{ file, found: besideAnother(text, read.layer.drawn) }]
        : []
    })
    expect(layers.length).toBeGreaterThan(1)
    for (const { found } of layers) expectAlike(found)
  })
})

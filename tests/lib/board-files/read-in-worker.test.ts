import { strToU8, zipSync } from 'fflate'
import { expect, test } from 'vitest'
import { readInWorker } from '@/lib/board-files/read-in-worker'
import { textsOf } from '@/tests/rules/board/drawn-board'
import { PLACED_BOARD, placementText } from '@/tests/rules/board/placed-board'
import { ONE_HOLE } from '@/tests/rules/board/small-board'

const { top: TOP, drill: DRILL } = ONE_HOLE

test('reads an archive in a thread of its own: every file told of, the board, and its pictures', async () => {
  const archive = zipSync({
    'top.gbr': strToU8(TOP),
    'board-PTH.drl': strToU8(DRILL),
    'broken.gbr': strToU8(TOP.replace('M02*', '')),
    'readme.txt': strToU8('Order 5 of these.'),
  })
  const { files, board, pictures } = await readInWorker(archive, { roles: {}, watched: undefined })
  expect(files.map(({ name, format }) => [name, format])).toEqual([
    ['top.gbr', 'gerber'],
    ['board-PTH.drl', 'drill'],
    ['broken.gbr', 'unread'],
    ['readme.txt', 'other'],
  ])
  expect(files[2]!.refused).toEqual({ line: 6, reason: 'The file breaks off: its end, M02, is missing.' })
  expect(board.holes[0]!.top!.ringMm).toBeCloseTo(0.35, 9)
  expect(pictures).toEqual([{ code: 'copper-top', path: expect.stringMatching(/^M[\d.]+/) }])
})

test('what a person says of a file goes before what the file says', async () => {
  const archive = zipSync({ 'top.gbr': strToU8(TOP), 'board-PTH.drl': strToU8(DRILL) })
  const { board } = await readInWorker(archive, {
    roles: { 'top.gbr': { kind: 'copper', side: 'bottom' } },
    watched: undefined,
  })
  expect(board.holes[0]!.top).toBeUndefined()
  expect(board.holes[0]!.bottom!.ringMm).toBeCloseTo(0.35, 9)
})

test('tells of a placement how it lies on the board, and proposes the unit that only the board tells', async () => {
  const texts = {
    ...textsOf(PLACED_BOARD),
    'centres.csv': placementText(undefined, { unit: 'mil' }),
    'parts.csv': 'Ref,Qty\nR1,1',
  }
  const archive = zipSync(
    Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, strToU8(text)])),
  )
  const told = async (roles: Parameters<typeof readInWorker>[1]['roles']) =>
    (await readInWorker(archive, { roles, watched: undefined })).files
  const files = await told({})
  const role = { kind: 'placement', side: undefined, unit: 'mil', moved: false } as const
  expect(files.find(({ name }) => name === 'centres.csv')).toMatchObject({
    format: 'placement',
    proposed: { role, by: 'fit' },
    role,
    count: 6,
    unit: 'mil',
    saysSides: true,
    fit: { unitBy: 'fit', liesOn: true },
  })
  expect(files.find(({ name }) => name === 'parts.csv')).toMatchObject({
    format: 'parts list',
    role: { kind: 'parts list' },
    count: 1,
  })
  const wrong = await told({ 'centres.csv': { ...role, unit: 'inch' } })
  expect(wrong.find(({ name }) => name === 'centres.csv')).toMatchObject({
    role: { unit: 'inch' },
    fit: { unitBy: 'person', liesOn: false },
  })
})

test('ends a reading that takes too long, with a sentence', async () => {
  const many = Array.from({ length: 30 }, (_, at) => [
    `layer${at}.gbr`,
    strToU8(TOP.replace('D10*', '%SRX1000Y1000I0.1J0.1*%\nD10*').replace('M02', '%SR*%\nM02')),
  ])
  const archive = zipSync(Object.fromEntries(many))
  await expect(
    readInWorker(archive, { roles: {}, watched: undefined }, { milliseconds: 3000, heapMiB: 400 }),
  ).rejects.toThrow(/not read within 3 s|more than 400 MiB/)
})

test('refuses what is no archive', async () => {
  await expect(readInWorker(strToU8('no archive'), { roles: {}, watched: undefined })).rejects.toThrow(
    /no sound zip archive/,
  )
})

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import type { PlacedPart } from '@/shared/board/judged/placed-part'
import { boardOf } from '@/shared/board/board'
import { layersFrom, readBoardFile, type ReadFile } from '@/shared/board/read-files'
import {
  barrelPlating,
  landEdition,
  leadHoles,
  producibilityLevel,
} from '@/shared/plan/parameters/lead-holes'
import { placementDifferences } from '@/shared/board/placement/placement-check'
import { set } from '../facts-builder'
import { leadHole } from '../specification/lead-hole-rows'
import { judged } from './judged-board'

/**
 * Production files of public open-hardware boards, each with what was computed from its layout by an independent
 * geometry library (`truth.json`). They are other people's work and stay beside the project; without them nothing is
 * tried here.
 */
const BOARDS = join(import.meta.dirname, '../../../../shared/boards')
const names = existsSync(BOARDS)
  ? readdirSync(BOARDS).filter((name) => existsSync(join(BOARDS, name, 'files')))
  : []

interface Truth {
  holes: { x: number; y: number; w: number; h: number; plated: boolean; via: boolean; ring?: number }[]
  outline?: [left: number, top: number, right: number, bottom: number]
  gaps?: Record<string, { pairs: number; min: number; list: [number, string, string][] }>
}

const read = (name: string): ReadFile[] => {
  const folder = join(BOARDS, name, 'files')
  return readdirSync(folder).map((file) =>
    readBoardFile({ name: file, text: readFileSync(join(folder, file), 'latin1') }),
  )
}
const roleOf = (file: ReadFile) => ('proposed' in file ? file.proposed.role : ({ kind: 'other' } as const))
const boardFrom = (read: readonly ReadFile[], roles: typeof roleOf) => boardOf(layersFrom(read, roles))

test.skipIf(names.length > 0)('the real boards are not beside the project: nothing of them was tried', () => {
  expect(names).toEqual([])
})

test.each(names)('%s: every layer is read, and every hole has its land', (name) => {
  const files = read(name)
  expect(files.filter(({ format }) => format === 'unread')).toEqual([])
  const board = boardFrom(files, roleOf)
  const plated = board.holes.filter(({ kind }) => kind !== 'mounting')
  expect(plated.length).toBeGreaterThan(0)
  expect(plated.filter(({ top, bottom }) => !top && !bottom)).toEqual([])
  expect(board.outline).toBeDefined()
})

/** The files hold one of the two boards that these layouts hold. */
const TWO_BOARDS = ['gearseq', 'precadsr']

test.each(names.filter((name) => existsSync(join(BOARDS, name, 'truth.json'))))(
  '%s: holes, rings, gaps and outline are those of its layout',
  (name) => {
    const truth = JSON.parse(readFileSync(join(BOARDS, name, 'truth.json'), 'utf8')) as Truth
    const board = boardFrom(read(name), roleOf)
    const there = truth.holes.flatMap((hole) => {
      const found = board.holes.find(
        ({ a, b }) => Math.hypot((a[0] + b[0]) / 2 - hole.x, (a[1] + b[1]) / 2 + hole.y) < 0.015,
      )
      return found ? [{ hole, found }] : []
    })
    expect(there.length).toBe(board.holes.length)
    if (!TWO_BOARDS.includes(name)) expect(there.length).toBe(truth.holes.length)
    for (const { hole, found } of there) {
      const { a, b, diameterMm, top, bottom, kind } = found
      // Inch drill files have four decimals: 1.3 µm.
      expect(Math.abs(diameterMm - Math.min(hole.w, hole.h))).toBeLessThan(0.003)
      expect(
        Math.abs(Math.hypot(b[0] - a[0], b[1] - a[1]) + diameterMm - Math.max(hole.w, hole.h)),
      ).toBeLessThan(0.006)
      if (!hole.plated) continue
      expect(kind).toBe(hole.via ? 'via' : 'component')
      if (hole.ring !== undefined)
        expect(
          Math.abs(Math.min(...[top, bottom].flatMap((land) => land?.ringMm ?? [])) - hole.ring),
        ).toBeLessThan(0.002)
    }
    if (TWO_BOARDS.includes(name)) return
    const [left, up, right, down] = truth.outline!
    expect(board.outline!.box.maxX - board.outline!.box.minX).toBeCloseTo(right - left, 1)
    expect(board.outline!.box.maxY - board.outline!.box.minY).toBeCloseTo(down - up, 1)
    const layers = Object.values(truth.gaps!)
    for (const [side, gaps] of [
      ['top', layers[0]],
      ['bottom', layers.at(-1)],
    ] as const) {
      // A net tie has no gap in the layout, and is one piece of copper on purpose.
      const least = gaps!.list.map(([gap]) => gap).find((gap) => gap > 0)
      const found = board.gaps.find(({ layer }) => layer === side)?.gapMm
      if (least !== undefined && least < 0.6) expect(Math.abs(found! - least)).toBeLessThan(0.001)
    }
  },
)

test.each(names.filter((name) => existsSync(join(BOARDS, name, 'files', 'netlist.ipc'))))(
  '%s: every place of the netlist has its hole or its copper, and no net is open or joined to another',
  (name) => {
    const files = read(name)
    const { netlist, holes } = boardFrom(files, roleOf)
    expect(netlist!.places).toBeGreaterThan(90)
    expect(netlist!.met).toBe(netlist!.places)
    expect(netlist!.differences).toEqual([])
    // The copper files name the pins of holes too, so that both have to agree.
    const alone = boardFrom(files, (file) => (file.format === 'netlist' ? { kind: 'other' } : roleOf(file)))
    const named = alone.holes.map(({ component, pin }, at) => [component, pin, holes[at]!] as const)
    const listed = files.flatMap((file) => (file.format === 'netlist' ? file.netlist.points : []))
    const both = named.flatMap(([component, pin, { a, b }]) => {
      const there = listed.find(
        ({ at, kind }) =>
          kind === 'hole' && Math.hypot((a[0] + b[0]) / 2 - at[0], (a[1] + b[1]) / 2 - at[1]) < 0.01,
      )
      return component !== undefined && there?.component !== undefined
        ? [[`${component} ${pin}`, `${there.component} ${there.pin}`]]
        : []
    })
    expect(both.length).toBeGreaterThan(50)
    expect(both.filter(([inCopper, inList]) => inCopper !== inList)).toEqual([])
  },
)

test.each(names.filter((name) => existsSync(join(BOARDS, name, 'truth.json')) && !TWO_BOARDS.includes(name)))(
  '%s: the holes whose rings fail are those of its layout, and no copper lies beyond its edge',
  (name) => {
    const truth = JSON.parse(readFileSync(join(BOARDS, name, 'truth.json'), 'utf8')) as Truth
    const board = boardFrom(read(name), roleOf)
    const sizes = [...new Set(board.holes.map(({ diameterMm }) => Math.round(diameterMm * 1000) / 1000))]
    const rows = sizes.map((holeMm) => leadHole({ holeMm }))
    const values = [
      set(leadHoles, rows),
      set(barrelPlating, 25),
      set(producibilityLevel, 'B'),
      set(landEdition, 'ipc-2221'),
    ]
    const found = judged(board, values)
    const failing = new Set(
      (found.get('rings-on-board')!.finding.parts ?? [])
        .filter(({ verdict }) => verdict === 'fails')
        .map((part) => (part as PlacedPart).at.map((mm) => mm.toFixed(2)).join()),
    )
    // Tolerance ± 0.05 and allowance 0.25 are of diameters, a ring of 0.05 has to be left: 0.05 + (0.05 + 0.25)/2.
    const narrow = truth.holes.filter(({ plated, via, ring }) => plated && !via && ring! < 0.2 - 0.002)
    const atTheLimit = truth.holes.filter(({ via, ring }) => !via && Math.abs(ring! - 0.2) <= 0.002)
    expect(failing.size).toBeGreaterThanOrEqual(narrow.length)
    expect(failing.size).toBeLessThanOrEqual(narrow.length + atTheLimit.length)
    expect(board.edges.length).toBeGreaterThan(0)
    expect(board.edges[0]!.gapMm).toBeGreaterThan(0)
  },
)

test.each(names.filter((name) => existsSync(join(BOARDS, name, 'files', 'positions.csv'))))(
  '%s: every centre lies within the pins of its component, and parts list and pins name the same components',
  (name) => {
    const files = read(name)
    const { placement, joints, marks, listed } = boardFrom(files, roleOf)
    const [fit] = placement!.files
    expect(fit).toMatchObject({ against: 'pins', liesOn: true, unit: 'mm', unitBy: 'fit', move: undefined })
    expect(fit!.compared).toBeGreaterThan(8)
    expect(fit!.met).toBe(fit!.compared)
    expect(fit!.components).toBe(fit!.compared)
    const list = listed!
    const differences = placementDifferences(placement!.placed, { joints, marks, list })
    // Of these boards holes that hold them have a pin too.
    expect(differences.map(({ kind }) => kind).filter((kind) => kind !== 'one joint, not placed')).toEqual([])
    // Every designator of the layout, written by the program that made it.
    const all = readFileSync(join(BOARDS, name, 'files', 'designators.csv'), 'utf8').match(
      /[A-Z]+\d+(?=:1)/g,
    )!
    const holding = differences.flatMap(({ components }) => components.map(({ reference }) => reference))
    expect([...list.flatMap((row) => row.names), ...holding].sort()).toEqual([...all].sort())
  },
)

import { boardOf, type Board } from '@/shared/board/board'
import { layersFrom, readBoardFile, type ReadFile } from '@/shared/board/read-files'

/** A board drawn by its parts, in mm, and written out as production files in either unit, moved or turned. */

export type Place = readonly [x: number, y: number]
type LayerName = 'top' | 'inner 2' | 'bottom'

export interface DrawnBoard {
  readonly lands: readonly {
    readonly on: readonly LayerName[]
    readonly at: Place
    /** One number for a round land, two for a rectangle. */
    readonly size: number | Place
    readonly bare?: boolean
    readonly net?: string
    readonly pin?: readonly [component: string, pin: string]
    /** What its aperture is for. */
    readonly use?: string
  }[]
  readonly lines: readonly {
    readonly on: LayerName
    readonly from: Place
    readonly to: Place
    readonly width: number
  }[]
  /** Copper with corners, drawn before all else. */
  readonly planes?: readonly { readonly on: LayerName; readonly points: readonly Place[] }[]
  /** What is taken out of the planes. */
  readonly clears?: readonly { readonly on: LayerName; readonly at: Place; readonly size: number }[]
  readonly holes: readonly { readonly at: Place; readonly mm: number; readonly plated: boolean }[]
  readonly outline: readonly Place[]
  readonly cutouts?: readonly (readonly Place[])[]
  readonly netlist?: string
}

/** How a board is written out: in which unit, and where each of its places comes to lie. */
export interface Writing {
  readonly unit: 'mm' | 'inch'
  readonly place: (at: Place) => Place
  /** Whether what lay along x lies along y. */
  readonly turned: boolean
}
export const AS_DRAWN: Writing = { unit: 'mm', place: (at) => at, turned: false }

const MM = { mm: 1, inch: 25.4 } as const
const FUNCTIONS = { top: 'Copper,L1,Top', 'inner 2': 'Copper,L2,Inr', bottom: 'Copper,L4,Bot' } as const

/** Six decimals of either unit: a nanometre, or a fortieth of a micrometre. */
function gerberOf(writing: Writing, fileFunction: string, draw: (pen: Pen) => void): string {
  const pen = new Pen(writing)
  draw(pen)
  const mode = writing.unit === 'mm' ? 'MM' : 'IN'
  return [
    '%FSLAX46Y46*%',
    `%MO${mode}*%`,
    `%TF.FileFunction,${fileFunction}*%`,
    ...pen.apertures,
    ...pen.lines,
    'M02*',
    '',
  ].join('\n')
}

class Pen {
  readonly apertures: string[] = []
  readonly lines: string[] = []
  private count = 0
  constructor(private readonly writing: Writing) {}
  private readonly mm = (value: number): string => (value / MM[this.writing.unit]).toFixed(8)
  private at(place: Place): string {
    const [x, y] = this.writing.place(place).map((each) => Math.round((each / MM[this.writing.unit]) * 1e6))
    return `X${x}Y${y}`
  }
  private use(size: number | Place, what?: string): string {
    const sides = typeof size === 'number' ? size : this.writing.turned ? ([size[1], size[0]] as const) : size
    const shape =
      typeof sides === 'number' ? `C,${this.mm(sides)}` : `R,${this.mm(sides[0])}X${this.mm(sides[1])}`
    const number = 10 + this.count++
    const defined = `%ADD${number}${shape}*%`
    this.apertures.push(
      ...(what === undefined ? [defined] : [`%TA.AperFunction,${what}*%`, defined, '%TD*%']),
    )
    return `D${number}*`
  }
  region(points: readonly Place[]): void {
    this.lines.push('G36*')
    ;[...points, points[0]!].forEach((place, at) =>
      this.lines.push(`${this.at(place)}${at === 0 ? 'D02' : 'D01'}*`),
    )
    this.lines.push('G37*')
  }
  clear(draw: () => void): void {
    this.lines.push('%LPC*%')
    draw()
    this.lines.push('%LPD*%')
  }
  flash(at: Place, size: number | Place, attributes: readonly string[] = [], what?: string): void {
    this.lines.push(
      ...attributes,
      this.use(size, what),
      `${this.at(at)}D03*`,
      ...(attributes.length > 0 ? ['%TD*%'] : []),
    )
  }
  line(places: readonly Place[], width: number): void {
    this.lines.push(this.use(width))
    places.forEach((place, at) => this.lines.push(`${this.at(place)}${at === 0 ? 'D02' : 'D01'}*`))
  }
}

/** The board's files by their names, as they are written out. */
export function textsOf(board: DrawnBoard, writing: Writing = AS_DRAWN): Readonly<Record<string, string>> {
  const texts: Record<string, string> = {}
  for (const layer of ['top', 'inner 2', 'bottom'] as const) {
    const lands = board.lands.filter(({ on }) => on.includes(layer))
    const lines = board.lines.filter(({ on }) => on === layer)
    const planes = (board.planes ?? []).filter(({ on }) => on === layer)
    const clears = (board.clears ?? []).filter(({ on }) => on === layer)
    if (lands.length + lines.length + planes.length === 0) continue
    texts[`${layer}.gbr`] = gerberOf(writing, FUNCTIONS[layer], (pen) => {
      for (const { points } of planes) pen.region(points)
      if (clears.length > 0) pen.clear(() => clears.forEach(({ at, size }) => pen.flash(at, size)))
      for (const { at, size, net, pin, use } of lands)
        pen.flash(
          at,
          size,
          [
            ...(net === undefined ? [] : [`%TO.N,${net}*%`]),
            ...(pin === undefined ? [] : [`%TO.P,${pin.join()}*%`]),
          ],
          use,
        )
      for (const { from, to, width } of lines) pen.line([from, to], width)
    })
  }
  for (const side of ['top', 'bottom'] as const)
    texts[`mask-${side}.gbr`] = gerberOf(writing, `Soldermask,${side === 'top' ? 'Top' : 'Bot'}`, (pen) => {
      for (const { at, size, bare, on } of board.lands)
        if (bare && on.includes(side))
          pen.flash(at, typeof size === 'number' ? size + 0.1 : [size[0] + 0.1, size[1] + 0.1])
    })
  texts['outline.gbr'] = gerberOf(writing, 'Profile,NP', (pen) => {
    for (const ring of [board.outline, ...(board.cutouts ?? [])]) pen.line([...ring, ring[0]!], 0.1)
  })
  for (const plated of [true, false])
    texts[plated ? 'b-PTH.drl' : 'b-NPTH.drl'] = drillOf(board, writing, plated)
  if (board.netlist !== undefined) texts['nets.ipc'] = board.netlist
  return texts
}

export const filesOf = (board: DrawnBoard, writing?: Writing): ReadFile[] =>
  Object.entries(textsOf(board, writing)).map(([name, text]) => readBoardFile({ name, text }))

function drillOf({ holes }: DrawnBoard, { unit, place }: Writing, plated: boolean): string {
  const these = holes.filter((hole) => hole.plated === plated)
  const inUnit = (mm: number): string => (mm / MM[unit]).toFixed(7)
  return [
    'M48',
    unit === 'mm' ? 'METRIC,TZ' : 'INCH,TZ',
    ...these.map(({ mm }, at) => `T${at + 1}C${inUnit(mm)}`),
    '%',
    ...these.flatMap(({ at }, tool) => {
      const [x, y] = place(at)
      return [`T${tool + 1}`, `X${inUnit(x)}Y${inUnit(y)}`]
    }),
    'M30',
    '',
  ].join('\n')
}

export const readAs = (files: readonly ReadFile[]): Board =>
  boardOf(layersFrom(files, (file) => ('proposed' in file ? file.proposed.role : { kind: 'other' })))

export const boardFrom = (board: DrawnBoard, writing?: Writing): Board => readAs(filesOf(board, writing))

import { MM_PER_INCH } from '../coordinate-format'
import { READ_LIMITS } from '../read-limits'
import { Unreadable } from '../unreadable'
import type { Passed } from '../gerber/gerber-layer'
import type { Netlist, NetPoint } from './netlist-file'

/**
 * Reads a netlist of a bare board for electrical test (IPC-D-356A, and the
 * earlier IPC-D-356 as far as they are alike): holes, lands and tooling holes
 * with their nets, in either unit system. Columns from memory of the standard,
 * held against files of two programs that write it.
 *
 * Lengths come out in mm. Errors: Unreadable with line and reason.
 */
export function readNetlist(text: string): Netlist {
  const reader = new NetlistReader()
  const lines = text.split(/\r\n|\r|\n/)
  lines.forEach((line, index) => reader.line(line.trimEnd(), index + 1))
  return reader.result(lines.length)
}

/** Whether a text is such a netlist: its first record is a comment, a parameter or a place. */
export const isNetlist = (text: string): boolean =>
  /^(P {2}|3[0126]7)/m.test(text.slice(0, 4000)) && /^(3[0126]7).{38}X/m.test(text)

/** What a record of a place is; the continuations of a record begin with 0. */
const KINDS: Readonly<Record<string, NetPoint['kind']>> = {
  '307': 'hole',
  '317': 'hole',
  '327': 'land',
  '367': 'tooling',
}

/** Records beside places that this reader knows and leaves: their names for the person. */
const LEFT: readonly (readonly [RegExp, string])[] = [
  [/^[03](07|17|27|67)/, 'continuation'],
  [/^[03]78/, 'conductor'],
  [/^[03]79/, 'neighbouring net'],
  [/^[03]89/, 'outline'],
  [/^[03]\d\d/, 'other record'],
]

/** Parts of a record by their columns, from 0. */
const COLUMNS = {
  net: [3, 17],
  component: [20, 26],
  pin: [27, 31],
  diameter: [33, 37],
  layer: [39, 41],
} as const

const PLACE = /^X([+\- ]?[\d ]{1,6}?)Y([+\- ]?[\d ]{1,6})(?![\d])/
const NO_NET = 'N/C'

class NetlistReader {
  private unit: 'mm' | 'inch' | undefined
  private readonly points: (Omit<NetPoint, 'net'> & { readonly net: string })[] = []
  private readonly passed = new Map<string, Passed>()
  private readonly names = new Map<string, string>()
  /** Further images of a panel stand in the same file, moved: only the first is the board. */
  private inImage = true
  private ended = false

  line(line: string, number: number): void {
    if (this.ended || line === '') return
    if (line.startsWith('999')) {
      this.ended = true
      return
    }
    const name = /^[CP]\s+(NNAME\S*)\s+(\S.*)$/.exec(line)
    if (name) return void this.names.set(name[1]!, name[2]!.trim())
    if (line.startsWith('C')) return
    if (line.startsWith('P')) return this.parameter(line.slice(1).trim(), number)
    if (!this.inImage) return this.pass('further image', number)
    const kind = KINDS[line.slice(0, 3)]
    if (kind) return this.place(kind, line, number)
    const left = LEFT.find(([pattern]) => pattern.test(line))
    if (!left) throw new Unreadable(`“${line.slice(0, 40)}” is no record of a netlist.`, number)
    this.pass(left[1], number)
  }

  private parameter(parameter: string, number: number): void {
    const units = /^UNITS\s+(.*)$/.exec(parameter)?.[1]
    if (units !== undefined) this.unitStated(unitOf(units, number), number)
    const image = /^IMAGE\s+(\S+)/.exec(parameter)?.[1]
    if (image !== undefined) this.inImage = image === 'PRIMARY'
  }

  private unitStated(unit: 'mm' | 'inch', number: number): void {
    if (this.points.length > 0 && unit !== (this.unit ?? 'inch'))
      throw new Unreadable('The unit changes after the first place.', number)
    this.unit = unit
  }

  private pass(what: string, line: number): void {
    const before = this.passed.get(what)
    this.passed.set(what, before ? { ...before, times: before.times + 1 } : { what, times: 1, line })
  }

  private place(kind: NetPoint['kind'], line: string, number: number): void {
    if (this.points.length >= READ_LIMITS.netPoints)
      throw new Unreadable(`The netlist has more than ${READ_LIMITS.netPoints} places.`, number)
    const part = (name: keyof typeof COLUMNS): string => line.slice(...COLUMNS[name]).trim()
    const where = PLACE.exec(line.slice(41))
    const [x, y] = [whole(where?.[1]), whole(where?.[2])]
    if (x === undefined || y === undefined)
      throw new Unreadable('The place does not begin at column 42 as X and Y.', number)
    const step = this.stepMm()
    const [component, pin] = [part('component'), part('pin')]
    this.points.push({
      net: part('net'),
      ...(component !== '' && component !== 'VIA' && { component }),
      ...(pin !== '' && { pin }),
      via: component === 'VIA',
      kind,
      at: [x * step, y * step],
      ...this.holeOf(line, number),
      layer: layerOf(part('layer'), number),
      line: number,
    })
  }

  private holeOf(line: string, number: number): Pick<NetPoint, 'diameterMm' | 'plated'> {
    if (line[32] !== 'D') return {}
    const diameter = whole(line.slice(...COLUMNS.diameter))
    if (diameter === undefined || diameter <= 0) throw new Unreadable('The hole has no size.', number)
    const plating = { P: true, U: false }[line[37] ?? '']
    return { diameterMm: diameter * this.stepMm(), ...(plating !== undefined && { plated: plating }) }
  }

  /** What one step of a number is, mm: a ten thousandth of an inch, or a micrometre. */
  private stepMm(): number {
    return this.unit === 'mm' ? 0.001 : MM_PER_INCH / 10_000
  }

  result(lines: number): Netlist {
    if (!this.ended) throw new Unreadable('The netlist breaks off: its end, 999, is missing.', lines)
    return {
      unit: this.unit ?? 'inch',
      unitAssumed: this.unit === undefined,
      points: this.points.map(({ net, ...point }) => ({ ...point, net: this.fullName(net) })),
      passed: [...this.passed.values()],
    }
  }

  /** A long name is said once, in a parameter or nowhere, and stands as its short name in the records. */
  private fullName(short: string): string | undefined {
    return short === '' || short === NO_NET ? undefined : (this.names.get(short) ?? short)
  }
}

/** `CUST 0` and `CUST 2` count in inches, `CUST 1` and `SI` in millimetres; 0 and 2 differ in how angles are given. */
function unitOf(units: string, line: number): 'mm' | 'inch' {
  const words = units.trim().split(/\s+/).join(' ')
  if (words === 'CUST 0' || words === 'CUST 2' || words === 'CUST') return 'inch'
  if (words === 'CUST 1' || words === 'SI') return 'mm'
  throw new Unreadable(`The unit “${units.trim().slice(0, 20)}” is not known.`, line)
}

function layerOf(digits: string, line: number): number {
  if (digits === '') return 0
  if (!/^\d{1,2}$/.test(digits)) throw new Unreadable(`“${digits}” is no layer.`, line)
  return Number(digits)
}

/** A number of a record, whose sign and leading zeros may be blanks; undefined where it is none. */
function whole(digits: string | undefined): number | undefined {
  const text = digits?.trim().replace(/^([+-]) +/, '$1')
  return text !== undefined && /^[+-]?\d+$/.test(text) ? Number(text) : undefined
}

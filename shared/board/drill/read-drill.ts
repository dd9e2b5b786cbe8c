import { coordinate, MM_PER_INCH } from '../coordinate-format'
import { READ_LIMITS } from '../read-limits'
import { Unreadable } from '../unreadable'
import type { Drilled, DrillFile, DrillReading } from './drill-file'

/**
 * Reads a drill file in the format of the numerically controlled drilling
 * machines that the trade goes on using (Excellon 2): tool tables, holes, G85 and
 * routed slots, repeats, both units, both rules of zeros, and what comments
 * say of plating and use. `as` overrides what the file says of its numbers.
 *
 * Lengths come out in mm. Errors: Unreadable with line and reason.
 * Source: Excellon Format 2 as its files use it; attributes by the Gerber specification's 5.6 in comments.
 */
export function readDrill(text: string, as?: DrillReading): DrillFile {
  const reader = new DrillReader(as)
  const lines = text.split(/\r\n|\r|\n/)
  lines.forEach((line, index) => reader.line(line.trim(), index + 1))
  return reader.result(lines.length)
}

interface Tool {
  readonly diameter: number
  readonly plated: boolean | undefined
  readonly use: string | undefined
}

interface RawHole {
  readonly a: readonly [string, string]
  readonly b: readonly [string, string]
  readonly tool: string
  readonly plated: boolean | undefined
  readonly use: string | undefined
  readonly line: number
  /** How often the step of a repeat was added to it. */
  readonly moved: readonly { readonly times: number; readonly by: readonly [string, string] }[]
}

/** X or Y with its number; whatever else stands in a line makes it one that is not understood. */
const AXIS = String.raw`[XY][+-]?(?:\d+\.?\d*|\.\d+)`
const REPEAT = new RegExp(String.raw`^R0*(\d+)((?:${AXIS})+)$`)
const MOVE = new RegExp(String.raw`^(G0?[01])?((?:${AXIS})*)(?:G85((?:${AXIS})+))?$`)

const DEFAULT_DIGITS = { mm: [3, 3], inch: [2, 4] } as const

class DrillReader {
  private readonly tools = new Map<string, Tool>()
  private readonly raw: RawHole[] = []
  private readonly attributes = new Map<string, readonly string[]>()
  private unit: 'mm' | 'inch' | undefined
  private digits: readonly [number, number] | undefined
  private zeros: 'leading' | 'trailing' | undefined
  private tool: string | undefined
  private x = '0'
  private y = '0'
  private plated: boolean | undefined
  private use: string | undefined
  private inHeader = false
  private sawHeader = false
  private ended = false
  private number = 0
  private routing = false
  private down: readonly [string, string] | undefined

  constructor(private readonly as: DrillReading | undefined) {}

  line(line: string, number: number): void {
    if (this.ended || line === '') return
    this.number = number
    const refuse = (reason: string): never => {
      throw new Unreadable(reason, number)
    }
    if (line.startsWith(';')) return this.comment(line.slice(1, READ_LIMITS.lineLength).trim())
    if (line.length > READ_LIMITS.lineLength) refuse('The line is longer than a drill file has them.')
    if (line === '%' || line === 'M95') {
      if (this.sawHeader) this.inHeader = false
      return
    }
    if (line === 'M48') {
      this.inHeader = this.sawHeader = true
      return
    }
    if (/^(METRIC|INCH)/.test(line)) return this.unitStated(line)
    const tool = /^T0*(\d+)(.*)$/.exec(line)
    if (tool) return this.toolLine(tool[1]!, tool[2]!, refuse)
    if (/^(M30|M00|M0)$/.test(line)) {
      this.ended = true
      return
    }
    this.body(line, refuse)
  }

  private comment(comment: string): void {
    const digits = /(?:FILE_)?FORMAT=\{?(\d):(\d)/.exec(comment)
    if (digits) this.digits = [Number(digits[1]), Number(digits[2])]
    if (/FORMAT=.*suppress trailing zeros/.test(comment)) this.zeros ??= 'leading'
    if (/FORMAT=.*suppress leading zeros/.test(comment)) this.zeros ??= 'trailing'
    const type = /^TYPE=(PLATED|NON_PLATED)/.exec(comment)
    if (type) this.plated = type[1] === 'PLATED'
    const attribute = /^#@!\s*(T[FAD])\.?([A-Za-z]*),?(.*)$/.exec(comment)
    if (!attribute) return
    const [, kind, name, rest] = attribute
    const fields = rest!.replace(/\*$/, '').split(',')
    if (kind === 'TF') this.attributes.set(name!, fields)
    else if (kind === 'TD') [this.plated, this.use] = [undefined, undefined]
    else if (name === 'AperFunction') {
      this.plated = fields[0] === 'NonPlated' ? false : fields[0] === 'Plated' ? true : undefined
      this.use = fields[2]
    }
  }

  private unitStated(line: string): void {
    this.unit = line.startsWith('METRIC') ? 'mm' : 'inch'
    const zeros = /,(LZ|TZ)/.exec(line)?.[1]
    if (zeros) this.zeros = zeros === 'LZ' ? 'leading' : 'trailing'
    const pattern = /,(0+)\.(0+)/.exec(line)
    if (pattern) this.digits = [pattern[1]!.length, pattern[2]!.length]
  }

  private toolLine(number: string, rest: string, refuse: (reason: string) => never): void {
    const size = /C([\d.]+)/.exec(rest)?.[1]
    if (size !== undefined) {
      const diameter = Number(size)
      if (!(diameter > 0 && diameter <= READ_LIMITS.apertureMm)) refuse(`Tool T${number} has no size.`)
      this.tools.set(number, { diameter, plated: this.plated, use: this.use })
      if (this.inHeader) return
    } else if (this.inHeader) return
    if (Number(number) === 0) {
      this.tool = undefined
      return
    }
    if (!this.tools.has(number)) refuse(`Tool T${number} is chosen but has no size.`)
    this.tool = number
  }

  private body(line: string, refuse: (reason: string) => never): void {
    if (this.inHeader) return this.header(line)
    if (/^(G90|G05|G5|G40|G80|FMAT|ICI|M97|M98|M47|M08|M09|M06)/.test(line)) return
    if (/^M71/.test(line)) return void (this.unit ??= 'mm')
    if (/^M72/.test(line)) return void (this.unit ??= 'inch')
    if (/^(G91|ICI,ON)/.test(line)) refuse('Coordinates count from the last point (G91), which is not read.')
    if (/^G0?[23]X/.test(line)) refuse('A slot is routed round an arc, which is not read.')
    if (/^(M25|M01|M02|M08X|M70|M80|M90)/.test(line)) refuse(`The pattern command ${line} is not read.`)
    if (/^M1[56]/.test(line) || line === 'M17') return this.spindle(line)
    const repeat = REPEAT.exec(line)
    if (repeat) return this.repeat(Number(repeat[1]), repeat[2]!, refuse)
    const move = MOVE.exec(line)
    if (!move) refuse(`“${line.slice(0, 40)}” is not understood.`)
    this.move(move![1], move![2]!, move![3], refuse)
  }

  private header(line: string): void {
    if (/^M71/.test(line)) this.unit ??= 'mm'
    if (/^M72/.test(line)) this.unit ??= 'inch'
    if (/^M71,TZ|^M72,TZ/.test(line)) this.zeros ??= 'trailing'
    if (/^M71,LZ|^M72,LZ/.test(line)) this.zeros ??= 'leading'
  }

  private move(
    route: string | undefined,
    to: string,
    slot: string | undefined,
    refuse: (reason: string) => never,
  ): void {
    const from = [this.x, this.y] as const
    this.goTo(to)
    if (route) this.routing = true
    if (this.routing && !slot) {
      if (route?.endsWith('1') || (!route && this.down)) this.cut(from, refuse)
      return
    }
    if (to === '' && !slot) return
    const a = [this.x, this.y] as const
    if (slot) this.goTo(slot)
    this.add(a, [this.x, this.y], refuse)
  }

  private cut(from: readonly [string, string], refuse: (reason: string) => never): void {
    this.down = [this.x, this.y]
    this.add(from, this.down, refuse)
  }

  private spindle(line: string): void {
    this.down = line === 'M15' ? [this.x, this.y] : undefined
    if (line === 'M17') this.routing = false
  }

  private goTo(coordinates: string): void {
    for (const [, axis, digits] of coordinates.matchAll(/([XY])([+-]?[\d.]+)/g))
      if (axis === 'X') this.x = digits!
      else this.y = digits!
  }

  private add(
    a: readonly [string, string],
    b: readonly [string, string],
    refuse: (reason: string) => never,
    moved: RawHole['moved'] = [],
  ): void {
    const tool = this.tool ?? refuse('A hole stands before a tool is chosen.')
    if (this.raw.length >= READ_LIMITS.holes) refuse(`The file has more than ${READ_LIMITS.holes} holes.`)
    const { plated, use } = this.tools.get(tool)!
    this.raw.push({ a, b, tool, plated: plated ?? this.plated, use, line: this.number, moved })
  }

  private repeat(times: number, step: string, refuse: (reason: string) => never): void {
    const last = this.raw.at(-1) ?? refuse('A repeat stands before a hole.')
    const by = [/X([+-]?[\d.]+)/.exec(step)?.[1] ?? '0', /Y([+-]?[\d.]+)/.exec(step)?.[1] ?? '0'] as const
    if (last.moved.length >= READ_LIMITS.repeatsDeep)
      refuse(`Repeats repeat each other more than ${READ_LIMITS.repeatsDeep} deep.`)
    for (let n = 1; n <= times; n++) this.add(last.a, last.b, refuse, [...last.moved, { times: n, by }])
  }

  result(lines: number): DrillFile {
    if (!this.ended && this.raw.length === 0)
      throw new Unreadable('It holds no hole and no end (M30).', lines)
    const file = this.attributes.get('FileFunction')?.[0]
    const unit = this.unit ?? 'inch'
    const [integerDigits, decimals] = this.digits ?? DEFAULT_DIGITS[unit]
    const reading = this.as ?? { unit, integerDigits, decimals, kept: this.zeros ?? 'trailing' }
    const decimalPoints = this.raw.every(({ a, b }) => [...a, ...b].every((text) => /^0$|\./.test(text)))
    const assumed: DrillFile['assumed'][number][] = []
    if (!this.unit) assumed.push('unit')
    if (!this.digits && !decimalPoints) assumed.push('digits')
    if (!this.zeros && !decimalPoints) assumed.push('zeros')
    const wholeFile = file === 'Plated' ? true : file === 'NonPlated' ? false : undefined
    return {
      holes: joinedSlots(this.raw.map((raw) => this.drilled(raw, reading, wholeFile))),
      reading,
      assumed: this.as ? [] : assumed,
      decimalPoints,
      attributes: this.attributes,
    }
  }

  private drilled(raw: RawHole, reading: DrillReading, wholeFile: boolean | undefined): Drilled {
    const mm = reading.unit === 'mm' ? 1 : MM_PER_INCH
    const steps = raw.moved.map(({ times, by }) => by.map((text) => times * lengthMm(text, reading)))
    const place = (point: readonly [string, string]): readonly [number, number] => [
      steps.reduce((sum, [x]) => sum + x!, lengthMm(point[0], reading)),
      steps.reduce((sum, [, y]) => sum + y!, lengthMm(point[1], reading)),
    ]
    const [a, b] = [place(raw.a), place(raw.b)]
    if (![...a, ...b].every((at) => Math.abs(at) <= READ_LIMITS.reachMm))
      throw new Unreadable(`The hole lies beyond ${READ_LIMITS.reachMm / 1000} m.`, raw.line)
    return {
      a,
      b,
      diameterMm: this.tools.get(raw.tool)!.diameter * mm,
      tool: `T${raw.tool}`,
      plated: raw.plated ?? wholeFile,
      ...(raw.use !== undefined && { use: raw.use }),
    }
  }
}

/** Where trailing zeros are kept, leading ones may be left out, and the other way round. */
function lengthMm(text: string, { unit, kept, ...digits }: DrillReading): number {
  const omitted = kept === 'trailing' ? 'leading' : 'trailing'
  return (coordinate(text, { ...digits, omitted }) ?? Number.NaN) * (unit === 'mm' ? 1 : MM_PER_INCH)
}

/** A slot that is cut to and fro is one slot. */
function joinedSlots(holes: readonly Drilled[]): Drilled[] {
  const seen = new Set<string>()
  return holes.filter(({ a, b, diameterMm }) => {
    const ends = [a, b].map(([x, y]) => `${x.toFixed(4)} ${y.toFixed(4)}`).sort()
    if (ends[0] === ends[1]) return true
    const key = `${ends.join(' ')} ${diameterMm}`
    return !seen.has(key) && seen.add(key)
  })
}

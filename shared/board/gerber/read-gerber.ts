import { unionOf } from '../geometry/boolean'
import { boxOf, type Point, type Solid } from '../geometry/solid'
import { READ_LIMITS } from '../read-limits'
import { lineAt, Unreadable } from '../unreadable'
import { AttributeTable } from './attributes'
import { coordinate, MM_PER_INCH, type CoordinateFormat } from '../coordinate-format'
import type { GerberLayer, Passed } from './gerber-layer'
import { macroShape } from './macro'
import { Plotter, Undrawable, type Aperture } from './plotter'
import { standardShape } from './standard-aperture'
import { wordsOf, type Word } from './words'

/**
 * Reads one layer of Gerber RS-274X, X2 or X3: lines, arcs, regions, standard,
 * macro and block apertures, polarity, mirror, rotation, scale, step and
 * repeat, and attributes in either form. Lengths come out in mm.
 *
 * Errors: Unreadable with line and reason, where the file does not say what its
 * numbers mean, breaks off, or asks for what would be drawn wrongly.
 * Source: Gerber Layer Format Specification 2022.02.
 */
export function readGerber(text: string): GerberLayer {
  return new GerberReader(text).read()
}

/** A flash that is more than so many times larger than its aperture was not meant. */
const SCALE_MAX = 100

/** Centres of shallow arcs lie far off. */
const REACHES_MM = { X: READ_LIMITS.reachMm, Y: READ_LIMITS.reachMm, I: 1e9, J: 1e9 } as const

class GerberReader {
  private readonly plotter = new Plotter()
  private readonly attributes = new AttributeTable()
  private readonly apertures = new Map<number, Aperture>()
  private readonly macros = new Map<string, readonly string[]>()
  private readonly passed = new Map<string, Passed>()
  private format: CoordinateFormat | undefined
  private mmPerUnit: number | undefined
  private operation = 0
  private ended = false
  private offset = 0
  private xy: [number, number] = [0, 0]
  /** Blocks and repeats that are open: the aperture it becomes, or how it is repeated. */
  private readonly open: (
    | { kind: 'block'; number: number; use: readonly string[] | undefined }
    | { kind: 'repeat'; x: number; y: number; stepX: number; stepY: number }
  )[] = []

  constructor(private readonly text: string) {}

  read(): GerberLayer {
    try {
      for (const word of wordsOf(this.text)) {
        this.offset = word.offset
        this.word(word)
        if (this.ended) break
      }
    } catch (error) {
      if (error instanceof Undrawable) this.refuse(error.message)
      throw error
    }
    if (!this.ended) this.refuse('The file breaks off: its end, M02, is missing.')
    if (this.mmPerUnit === undefined) this.refuse('The file does not say its unit (MO).')
    this.closeRepeat()
    return {
      unit: this.mmPerUnit === 1 ? 'mm' : 'inch',
      drawn: this.plotter.drawn,
      attributes: this.attributes.file,
      passed: [...this.passed.values()],
    }
  }

  private refuse(reason: string): never {
    throw new Unreadable(reason, lineAt(this.text, this.offset))
  }

  private pass(what: string): void {
    const before = this.passed.get(what)
    if (!before && this.passed.size >= READ_LIMITS.unknownKinds)
      this.refuse(`The file has more than ${READ_LIMITS.unknownKinds} kinds of commands that are not known.`)
    const line = before?.line ?? lineAt(this.text, this.offset)
    this.passed.set(what, { what, times: (before?.times ?? 0) + 1, line })
  }

  private word(word: Word): void {
    if (word.kind === 'command') this.command(word.blocks[0]!)
    else if (word.blocks[0]?.startsWith('AM')) this.macros.set(word.blocks[0].slice(2), word.blocks.slice(1))
    else word.blocks.forEach((block) => this.extended(block))
  }

  private extended(block: string): void {
    if (this.attributes.set(block)) return
    switch (block.slice(0, 2)) {
      case 'FS':
        return this.formatStated(block)
      case 'MO':
        return this.unit(block.slice(2))
      case 'AD':
        return this.defineAperture(block)
      case 'AB':
        return this.block(block.slice(2))
      case 'SR':
        return this.stepAndRepeat(block.slice(2))
      case 'LP':
        this.plotter.dark = block[2] !== 'C'
        return
      case 'LM':
        this.plotter.mirrorX = block.slice(2).includes('X')
        this.plotter.mirrorY = block.slice(2).includes('Y')
        return
      case 'LR':
        this.plotter.rotationDeg = this.number(block.slice(2))
        return
      case 'LS':
        this.plotter.scale = this.scale(block.slice(2))
        return
      default:
        return this.deprecated(block)
    }
  }

  /** Commands of old editions that do nothing as they mostly stand; with an effect they are refused. */
  private deprecated(block: string): void {
    const harmless: Record<string, RegExp> = {
      IP: /^IPPOS$/,
      AS: /^ASAXBY$/,
      IR: /^IR0*$/,
      MI: /^MI(A0)?(B0)?$/,
      OF: /^OF(A[+-]?0*\.?0*)?(B[+-]?0*\.?0*)?$/,
      SF: /^SF(A0*1\.?0*)?(B0*1\.?0*)?$/,
      IN: /./,
      LN: /./,
      IJ: /./,
      IF: /^$/,
      KO: /^$/,
    }
    const pattern = harmless[block.slice(0, 2)]
    if (!pattern) return this.pass(block.slice(0, 2))
    if (block.length > READ_LIMITS.lineLength || !pattern.test(block))
      this.refuse(`${block.slice(0, 40)} changes the whole image, which is not read.`)
  }

  private formatStated(block: string): void {
    const [, zeros, mode, x1, x2, y1, y2] = /^FS([LTD]?)([AI]?).*?X(\d)(\d)Y(\d)(\d)/.exec(block) ?? []
    if (x1 === undefined) this.refuse(`“${block}” does not say how the digits of a coordinate are counted.`)
    if (mode === 'I') this.refuse('Coordinates count from the last point (FS…I), which is not read.')
    if (x1 !== y1 || x2 !== y2) this.refuse('X and Y have digits of different numbers, which is not read.')
    this.format = {
      integerDigits: Number(x1),
      decimals: Number(x2),
      omitted: zeros === 'T' ? 'trailing' : 'leading',
    }
  }

  private unit(name: string): void {
    if (name !== 'MM' && name !== 'IN') this.refuse(`${name} is no unit: MM or IN is.`)
    const mmPerUnit = name === 'MM' ? 1 : MM_PER_INCH
    if (this.mmPerUnit !== undefined && this.mmPerUnit !== mmPerUnit)
      this.refuse('The unit changes within the file, which is not read.')
    this.mmPerUnit = mmPerUnit
  }

  private number(digits: string): number {
    const value = Number(digits)
    if (digits.trim() === '' || !Number.isFinite(value)) this.refuse(`“${digits}” is no number.`)
    return value
  }

  private scale(digits: string): number {
    const scale = this.number(digits)
    if (!(scale > 0 && scale <= SCALE_MAX)) this.refuse(`A scale of ${digits.slice(0, 20)} is not read.`)
    return scale
  }

  /** A length as it is, unless it lies where no board does. */
  private within(mm: number, reachMm: number): number {
    if (!(Math.abs(mm) <= reachMm)) this.refuse(`A length is beyond ${reachMm / 1000} m.`)
    return mm
  }

  private mm(): number {
    return this.mmPerUnit ?? this.refuse('A length stands before the unit (MO).')
  }

  private defineAperture(block: string): void {
    const [, digits, template, rest = ''] = /^ADD(\d+)([^,]+)(?:,(.*))?$/.exec(block) ?? []
    if (template === undefined) this.refuse(`“${block}” defines no aperture.`)
    if (this.apertures.size >= READ_LIMITS.apertures)
      this.refuse(`The file has more than ${READ_LIMITS.apertures} apertures.`)
    const modifiers = rest === '' ? [] : rest.split('X').map((field) => this.number(field))
    const number = Number(digits)
    const solids = this.shapeOf(template, modifiers)
    this.apertures.set(number, { kind: 'shape', number, use: this.attributes.forNewAperture(), solids })
  }

  private shapeOf(template: string, modifiers: readonly number[]) {
    const macro = this.macros.get(template)
    if (macro) {
      const shape = macroShape(macro, modifiers, this.mm())
      if (typeof shape === 'string') this.refuse(`Aperture macro ${template}: ${shape}.`)
      this.checkSize(shape)
      // One flash is one thing, of however many pieces: the land of a hole is all of them.
      return shape.length > 1 ? [{ kind: 'polygon' as const, rings: unionOf(shape) }] : shape
    }
    // A polygon's corners and its rotation are no lengths.
    const isLength = (index: number): boolean => template !== 'P' || index === 0 || index === 3
    const lengths = modifiers.map((value, index) =>
      isLength(index) ? this.within(value * this.mm(), READ_LIMITS.apertureMm) : value,
    )
    return standardShape(template, lengths) ?? this.refuse(`Aperture ${template} is not defined.`)
  }

  private checkSize(shape: readonly Solid[]): void {
    for (const solid of shape) {
      const { minX, minY, maxX, maxY } = boxOf(solid)
      if (minX <= maxX) for (const mm of [minX, minY, maxX, maxY]) this.within(mm, READ_LIMITS.apertureMm)
    }
  }

  private block(rest: string): void {
    if (rest !== '') {
      this.plotter.openBlock()
      const number = this.number(rest.replace(/^D/, ''))
      this.open.push({ kind: 'block', number, use: this.attributes.forNewAperture() })
      return
    }
    const closed = this.open.pop()
    if (closed?.kind !== 'block') this.refuse('A block is closed (AB) that was not opened.')
    const drawn = this.plotter.closeBlock()
    this.apertures.set(closed.number, { kind: 'block', number: closed.number, use: closed.use, drawn })
  }

  private stepAndRepeat(rest: string): void {
    this.closeRepeat()
    if (rest === '') return
    const [, x, y, stepX, stepY] = /^X(\d+)Y(\d+)I([\d.+-]+)J([\d.+-]+)$/.exec(rest) ?? []
    if (x === undefined) this.refuse(`“SR${rest}” does not say how often and how far it repeats.`)
    if (Number(x) <= 1 && Number(y) <= 1) return
    this.plotter.openBlock()
    const [acrossMm, upMm] = [stepX!, stepY!].map((step) =>
      this.within(this.number(step) * this.mm(), READ_LIMITS.reachMm),
    )
    this.open.push({ kind: 'repeat', x: Number(x), y: Number(y), stepX: acrossMm!, stepY: upMm! })
  }

  private closeRepeat(): void {
    const last = this.open.at(-1)
    if (last?.kind !== 'repeat') return
    this.open.pop()
    this.plotter.repeat(this.plotter.closeBlock(), last)
  }

  private command(block: string): void {
    if (/^G0?4/.test(block)) {
      const said = /^G0?4\s*#@!\s*(T[FAOD].*)$/.exec(block)?.[1]
      if (said) this.attributes.set(said.trim())
      return
    }
    const [codes, rest] = leadingCodes(block)
    codes.forEach((code) => this.general(code))
    if (rest === '') return
    const operation = /D0*([123])$/.exec(rest)?.[1]
    const coordinates = rest.replace(/D\d+$/, '')
    const tool = /^D0*([1-9]\d+)$/.exec(rest)?.[1]
    if (tool) return this.choose(Number(tool))
    if (/^M0*[012]$/.test(rest)) {
      this.ended = rest.endsWith('2') || rest.endsWith('0')
      return
    }
    if (!/^([XYIJ][+-]?[\d.]+)*$/.test(coordinates)) return this.pass(rest.slice(0, 12))
    // Files of old programs leave the operation out where it stays (deprecated, specification 8.3).
    this.operate(operation ? Number(operation) : this.operation, coordinates)
  }

  private general(code: string): void {
    switch (Number(code.slice(1))) {
      case 1:
        this.plotter.interpolation = 'line'
        return
      case 2:
        this.plotter.interpolation = 'right'
        return
      case 3:
        this.plotter.interpolation = 'left'
        return
      case 36:
        return this.plotter.openRegion(this.attributes.forObject(undefined))
      case 37:
        return this.plotter.closeRegion()
      case 70:
        return this.unit('IN')
      case 71:
        return this.unit('MM')
      case 74:
      case 75:
        this.plotter.singleQuadrant = code.endsWith('74')
        return
      case 91:
        return this.refuse('Coordinates count from the last point (G91), which is not read.')
      case 54:
      case 55:
      case 90:
        return
      default:
        return this.pass(code)
    }
  }

  private choose(number: number): void {
    const aperture = this.apertures.get(number)
    if (!aperture) this.refuse(`Aperture D${number} is chosen but not defined.`)
    this.plotter.aperture = aperture
  }

  private operate(operation: number, coordinates: string): void {
    this.operation = operation
    const values = this.coordinates(coordinates)
    this.xy = [values.get('X') ?? this.xy[0], values.get('Y') ?? this.xy[1]]
    const to: Point = this.xy
    const attributes = this.attributes.forObject(this.plotter.aperture?.use)
    if (operation === 1) this.plotter.draw(to, [values.get('I') ?? 0, values.get('J') ?? 0], attributes)
    else if (operation === 2) this.plotter.move(to)
    else if (operation === 3) this.plotter.flash(to, attributes)
    else if (coordinates !== '') this.refuse('A coordinate stands without an operation (D01, D02 or D03).')
  }

  /** X, Y, I and J as they stand, in mm. */
  private coordinates(text: string): ReadonlyMap<string, number> {
    const found = new Map<string, number>()
    for (const [, axis, digits] of text.matchAll(/([XYIJ])([+-]?[\d.]+)/g)) {
      const format = this.format ?? this.refuse('A coordinate stands before its format (FS).')
      const value = coordinate(digits!, format)
      if (value === undefined) this.refuse(`“${digits}” is no coordinate.`)
      found.set(axis!, this.within(value * this.mm(), REACHES_MM[axis as 'X' | 'Y' | 'I' | 'J']))
    }
    return found
  }
}

/** `G01`, `G54` and the like at the start of a block, and what follows them. */
function leadingCodes(block: string): [string[], string] {
  const codes: string[] = []
  let rest = block
  for (let match = /^G\d+/.exec(rest); match; match = /^G\d+/.exec(rest)) {
    codes.push(match[0])
    rest = rest.slice(match[0].length)
  }
  return [codes, rest]
}

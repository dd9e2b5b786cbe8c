import type { BoardJoint } from '../board-joints'
import type { Box } from '../geometry/solid'
import type { Outline } from '../outline'
import { LENGTH_UNITS, MM_OF, type LengthUnit } from './length-unit'
import { boxesOfPins, outside, type Pins } from './pin-boxes'
import type { PlacementFile, PlacementRow } from './placement-file'
import { mirroredAndShifted, mirroredOnly, moved, shifted, STAYS, type PlacementMove } from './placement-move'

/** A placement file with what a person says of it. */
export interface SaidPlacement extends PlacementFile {
  readonly name: string
  /** The side of components of which the file says none. */
  readonly sideSaid: 'top' | 'bottom' | undefined
  /** The unit that a person says, where the file says none. */
  readonly unitSaid: LengthUnit | undefined
  /** Whether a person wants it moved onto the board. */
  readonly moveSaid: boolean
}

/** One component where it sits on the board, mm. */
export interface PlacedComponent extends Omit<PlacementRow, 'line'> {
  /** How far its centre lies outside of its pins, mm; undefined where no file names its pins. */
  readonly awayMm: number | undefined
}

/** A placement file held against the board. */
export interface PlacementFit {
  readonly name: string
  readonly components: number
  /** Undefined where neither file nor person says it and the board does not tell it. */
  readonly unit: LengthUnit | undefined
  readonly unitBy: 'file' | 'person' | 'fit' | undefined
  /** What its centres could be held against. */
  readonly against: 'pins' | 'outline' | 'nothing'
  /** Centres that could be held against it, and those that lie there. */
  readonly compared: number
  readonly met: number
  /** Whether enough of them do; else nothing of the file is used. */
  readonly liesOn: boolean
  /** The move by which it lies on the board, or would. */
  readonly move: PlacementMove | undefined
}

export interface FittedPlacement {
  readonly fit: PlacementFit
  /** None where the file does not lie on the board. */
  readonly placed: readonly PlacedComponent[]
}

/** With fewer centres met than this share, placement and board do not lie on each other. */
const LIES_ON_SHARE = 0.8
/** How far from the box of its pins a centre may lie: bodies reach beyond their pins, mm. */
const BESIDE_PINS_MM = 1
/**
 * Holds a placement file against the pins of its components, or against the
 * outline where no file names a pin: in which unit, and whether it lies there.
 * Nothing is moved unless a person says so.
 */
export function fitPlacement(
  file: SaidPlacement,
  joints: readonly BoardJoint[],
  outline: Outline | undefined,
): FittedPlacement {
  const pins = boxesOfPins(joints)
  const unit = file.unit ?? file.unitSaid
  const units = unit ? [unit] : LENGTH_UNITS
  const found =
    pins.size > 0
      ? onPins(file, units, pins)
      : outline?.closed
        ? inOutline(file, units, outline.box)
        : NOT_HELD
  const used = found.unit ?? unit
  const unitBy: PlacementFit['unitBy'] = file.unit
    ? 'file'
    : file.unitSaid
      ? 'person'
      : used
        ? 'fit'
        : undefined
  const liesOn = found.lies || (file.moveSaid && found.move !== undefined)
  const { compared, met, against, move } = found
  const fit = { name: file.name, components: file.rows.length, unit: used, unitBy, against, compared, met, liesOn, move } // prettier-ignore
  if (!liesOn || !used) return { fit: { ...fit, liesOn: false }, placed: [] }
  const placed = scaled(file, used).map(({ line: _, ...row }): PlacedComponent => {
    const at = found.lies || !move ? row.at : moved(row, move)
    const box = pins.get(row.reference.toUpperCase())
    return { ...row, at, awayMm: box && outside(box, at) }
  })
  return { fit, placed }
}

interface Held {
  readonly unit: LengthUnit | undefined
  readonly lies: boolean
  readonly against: PlacementFit['against']
  readonly compared: number
  readonly met: number
  readonly move: PlacementMove | undefined
}

const NOT_HELD: Held = {
  unit: undefined,
  lies: false,
  against: 'nothing',
  compared: 0,
  met: 0,
  move: undefined,
}

function onPins(file: SaidPlacement, units: readonly LengthUnit[], pins: Pins): Held {
  const known = { ...file, rows: file.rows.filter(({ reference }) => pins.has(reference.toUpperCase())) }
  const compared = known.rows.length
  if (compared === 0) return NOT_HELD
  const asWritten = best(units.map((unit) => ({ unit, met: metBy(scaled(known, unit), pins, STAYS) })))
  const met = asWritten?.met ?? 0
  const held = { against: 'pins', compared, met } as const
  if (asWritten && met >= LIES_ON_SHARE * compared)
    return { ...held, unit: asWritten.unit, lies: true, move: undefined }
  for (const moveOf of [mirroredOnly, shifted, mirroredAndShifted]) {
    const tried = units.flatMap((unit) => {
      const rows = scaled(known, unit)
      const move = moveOf(rows, pins)
      return move ? [{ unit, move, met: metBy(rows, pins, move) }] : []
    })
    const found = best(tried)
    if (found && found.met >= LIES_ON_SHARE * compared)
      return { ...held, unit: found.unit, lies: false, move: found.move }
  }
  return { ...held, unit: undefined, lies: false, move: undefined }
}

/** The one unit in which every centre lies on the board. */
function inOutline(file: SaidPlacement, units: readonly LengthUnit[], box: Box): Held {
  const inside = (unit: LengthUnit): number =>
    scaled(file, unit).filter(({ at }) => outside(box, at) === 0).length
  const compared = file.rows.length
  const all = units.filter((unit) => compared > 0 && inside(unit) === compared)
  const unit = all.length === 1 ? all[0] : undefined
  const met = Math.max(0, ...units.map(inside))
  return { unit, lies: unit !== undefined, against: 'outline', compared, met, move: undefined }
}

/** What meets most; undefined where two meet as many, so that neither is told from the other. */
function best<T extends { readonly met: number }>(tried: readonly T[]): T | undefined {
  const [first, second] = [...tried].sort((one, other) => other.met - one.met)
  return first && first.met > (second?.met ?? 0) ? first : undefined
}

const metBy = (rows: readonly PlacementRow[], pins: Pins, move: PlacementMove): number =>
  rows.filter((row) => outside(pins.get(row.reference.toUpperCase())!, moved(row, move)) <= BESIDE_PINS_MM)
    .length

/** The rows in mm, each with its side as far as file or person says it. */
const scaled = ({ rows, sideSaid }: SaidPlacement, unit: LengthUnit): PlacementRow[] =>
  rows.map((row) => {
    const side = row.side ?? sideSaid
    return { ...row, at: [row.at[0] * MM_OF[unit], row.at[1] * MM_OF[unit]], ...(side && { side }) }
  })

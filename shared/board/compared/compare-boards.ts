import { groupedBy } from '@/shared/grouped-by'
import type { Board } from '../board'
import type { NetGap } from '../gaps'
import { byPlace } from '../geometry/by-place'
import { shiftOnto } from '../geometry/shift-onto'
import type { Point } from '../geometry/solid'
import type { BoardHole, Land } from '../hole'
import { middleOf } from '../joined-copper'
import { holeDifferences, pairHoles, type HoleDifference, type HolePair } from './compare-holes'
import { shiftedBoard } from './shifted-board'

/** A ring that is another than before, mm; undefined where there is no land. */
export interface RingDifference {
  readonly hole: BoardHole
  readonly layer: string
  readonly beforeMm: number | undefined
  readonly afterMm: number | undefined
  readonly at: Point
}

/** A gap of nets that is another than before, mm; undefined where it is wider than gaps are looked for. */
export interface GapDifference {
  readonly layer: string
  readonly nets: readonly [string, string]
  readonly beforeMm: number | undefined
  readonly afterMm: number | undefined
  readonly at: Point
}

/** What changed from one set of board files to another, at the places of the later one. */
export interface BoardDifferences {
  /** How the whole board lies elsewhere in the later files, mm: taken out of all that follows. */
  readonly shift: Point | undefined
  readonly outline: { readonly before: Size | undefined; readonly after: Size | undefined } | undefined
  readonly holes: readonly HoleDifference[]
  readonly rings: readonly RingDifference[]
  readonly gaps: readonly GapDifference[]
}

export type Size = readonly [widthMm: number, heightMm: number]

/** Lengths nearer than this are the same, mm: both files round. */
const SAME_MM = 0.005
/** A gap is found again within this, mm. */
const SAME_GAP_MM = 1
/** Where fewer holes than this share have stayed, the whole board may lie elsewhere. */
const STAYED_SHARE = 0.5

/** Puts an earlier board to where the later one lies, as far as one move does it. */
export function laidOn(before: Board, after: Board): { board: Board; shift: Point | undefined } {
  const at = byPlace(after.holes, middleOf)
  const stayed = before.holes.filter((hole) => at(middleOf(hole)).length > 0).length
  if (stayed >= STAYED_SHARE * before.holes.length) return { board: before, shift: undefined }
  const shift = shiftOnto(before.holes.map(middleOf), after.holes.map(middleOf))
  return shift ? { board: shiftedBoard(before, shift), shift } : { board: before, shift: undefined }
}

/** What is other in the later of two boards, of which the earlier was laid on it. */
export function compareBoards(before: Board, after: Board, shift: Point | undefined): BoardDifferences {
  const paired = pairHoles(before.holes, after.holes)
  return {
    shift,
    outline: outlineDifference(before, after),
    holes: holeDifferences(paired),
    rings: paired.pairs.flatMap(ringDifferences).sort((one, other) => least(one) - least(other)),
    gaps: gapDifferences(before.gaps, after.gaps).sort((one, other) => least(one) - least(other)),
  }
}

const least = ({
  afterMm,
  beforeMm,
}: {
  afterMm: number | undefined
  beforeMm: number | undefined
}): number => Math.min(afterMm ?? Infinity, beforeMm ?? Infinity)

const isOther = (one: number | undefined, other: number | undefined): boolean =>
  one === undefined || other === undefined ? one !== other : Math.abs(one - other) > SAME_MM

function outlineDifference(before: Board, after: Board): BoardDifferences['outline'] {
  const [was, is] = [sizeOf(before), sizeOf(after)]
  if (!isOther(was?.[0], is?.[0]) && !isOther(was?.[1], is?.[1])) return undefined
  return { before: was, after: is }
}

const sizeOf = ({ outline }: Board): Size | undefined =>
  outline && [outline.box.maxX - outline.box.minX, outline.box.maxY - outline.box.minY]

function ringDifferences([before, hole]: HolePair): RingDifference[] {
  const [was, is] = [landsOf(before), landsOf(hole)]
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((layer) => {
    const [beforeMm, afterMm] = [was.get(layer)?.ringMm, is.get(layer)?.ringMm]
    return isOther(beforeMm, afterMm) ? [{ hole, layer, beforeMm, afterMm, at: middleOf(hole) }] : []
  })
}

function landsOf({ top, bottom, inner }: BoardHole): Map<string, Land> {
  return new Map([
    ...(top ? [['top', top] as const] : []),
    ...(bottom ? [['bottom', bottom] as const] : []),
    ...inner.map(({ layer, land }) => [`inner ${layer}`, land] as const),
  ])
}

/** Gaps are found again by the nets that the files name, else by where they are. */
function gapDifferences(before: readonly NetGap[], after: readonly NetGap[]): GapDifference[] {
  const left = new Set(before)
  const near = byPlace(before, ({ at }) => at, SAME_GAP_MM)
  const named = groupedBy(before, keyOf)
  const changed = after.flatMap((gap): GapDifference[] => {
    const same =
      named.get(keyOf(gap))?.find((other) => left.has(other)) ??
      near(gap.at).find((other) => left.has(other) && other.layer === gap.layer)
    if (same) left.delete(same)
    const beforeMm = same?.gapMm
    return isOther(beforeMm, gap.gapMm)
      ? [{ layer: gap.layer, nets: gap.nets, at: gap.at, beforeMm, afterMm: gap.gapMm }]
      : []
  })
  const gone = [...left].map(({ layer, nets, gapMm, at }): GapDifference => {
    return { layer, nets, at, beforeMm: gapMm, afterMm: undefined }
  })
  return [...changed, ...gone]
}

const keyOf = ({ layer, nets }: NetGap): string => [layer, ...[...nets].sort()].join('\n')

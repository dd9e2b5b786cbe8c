import { groupedBy } from '@/shared/grouped-by'
import { byPlace } from '../geometry/by-place'
import type { Point } from '../geometry/solid'
import type { BoardHole } from '../hole'
import { middleOf } from '../joined-copper'

/** One hole of two sets of files; in one of them only where it was added or is gone. */
export type HoleDifference = { readonly at: Point; readonly hole: BoardHole } & (
  | { readonly kind: 'added' | 'gone' }
  | { readonly kind: 'moved'; readonly byMm: number; readonly before: BoardHole }
  | { readonly kind: 'resized'; readonly before: BoardHole }
  | { readonly kind: 'plating'; readonly before: BoardHole }
)

/** A hole of before with what it is now. */
export type HolePair = readonly [before: BoardHole, after: BoardHole]

/** How far a hole without a pin's name may have moved and still be the same one, mm. */
const MOVED_MM = 3
/** Sizes nearer than this are one size, mm: a set in inches rounds to 1.3 µm. */
const SAME_SIZE_MM = 0.005

/**
 * Holes of two sets of files put beside each other: first those at the same
 * place, then those of the same pin, then the nearest of the same size.
 */
export function pairHoles(
  before: readonly BoardHole[],
  after: readonly BoardHole[],
): { pairs: HolePair[]; gone: BoardHole[]; added: BoardHole[] } {
  const pairs: HolePair[] = []
  const left = new Set(after)
  const open = (candidates: readonly BoardHole[], wanted: (hole: BoardHole) => boolean = () => true) =>
    candidates.find((hole) => left.has(hole) && wanted(hole))
  const pass = (holes: readonly BoardHole[], find: (hole: BoardHole) => BoardHole | undefined): BoardHole[] =>
    holes.filter((hole) => {
      const found = find(hole)
      if (!found) return true
      left.delete(found)
      pairs.push([hole, found])
      return false
    })
  const at = byPlace(after, middleOf)
  const near = byPlace(after, middleOf, MOVED_MM)
  const pins = groupedBy(after.filter(isNamed), pinOf)
  const elsewhere = pass(before, (hole) => open(at(middleOf(hole))))
  const unnamed = pass(elsewhere, (hole) => (isNamed(hole) ? open(pins.get(pinOf(hole)) ?? []) : undefined))
  const gone = pass(unnamed, (hole) =>
    open(near(middleOf(hole)), (other) => isAlike(hole, other) && !(isNamed(hole) && isNamed(other))),
  )
  return { pairs, gone, added: [...left] }
}

const isNamed = ({ component, pin }: BoardHole): boolean => component !== undefined && pin !== undefined
const pinOf = ({ component, pin }: BoardHole): string => `${component} ${pin}`

const lengthOf = ({ a, b, diameterMm }: BoardHole): number =>
  Math.hypot(b[0] - a[0], b[1] - a[1]) + diameterMm

const isSize = (one: BoardHole, other: BoardHole): boolean =>
  Math.abs(one.diameterMm - other.diameterMm) <= SAME_SIZE_MM &&
  Math.abs(lengthOf(one) - lengthOf(other)) <= 2 * SAME_SIZE_MM

const isAlike = (one: BoardHole, other: BoardHole): boolean =>
  isSize(one, other) && one.plated === other.plated

/** A move that files in inches or of few decimals cannot tell from none, mm. */
const STILL_MM = 0.01

/** What became of the holes: one that moved and was resized is told of twice. */
export function holeDifferences({ pairs, gone, added }: ReturnType<typeof pairHoles>): HoleDifference[] {
  const changed = pairs.flatMap(([before, hole]): HoleDifference[] => {
    const at = middleOf(hole)
    const [x, y] = middleOf(before)
    const byMm = Math.hypot(at[0] - x, at[1] - y)
    return [
      ...(byMm > STILL_MM ? [{ kind: 'moved' as const, at, hole, before, byMm }] : []),
      ...(isSize(before, hole) ? [] : [{ kind: 'resized' as const, at, hole, before }]),
      ...(before.plated === hole.plated ? [] : [{ kind: 'plating' as const, at, hole, before }]),
    ]
  })
  return [
    ...gone.map((hole): HoleDifference => ({ kind: 'gone', at: middleOf(hole), hole })),
    ...added.map((hole): HoleDifference => ({ kind: 'added', at: middleOf(hole), hole })),
    ...changed,
  ]
}

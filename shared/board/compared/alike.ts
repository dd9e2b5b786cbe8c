import { groupedBy } from '@/shared/grouped-by'
import { middleOf } from '../joined-copper'
import type { GapDifference, RingDifference } from './compare-boards'
import type { HoleDifference } from './compare-holes'
import type { TurnedFinding, TurnedPlace } from './turned-findings'

/** Things that changed alike: one of a hundred holes with another drill says what all of them say. */
export type Alike<T> = readonly [T, ...T[]]

const alike = <T>(things: readonly T[], keyOf: (thing: T) => string): Alike<T>[] =>
  [...groupedBy(things, keyOf).values()].map((group) => group as unknown as Alike<T>)

const um = (mm: number | undefined): string => (mm === undefined ? '' : String(Math.round(mm * 1000)))

/** Holes that were added, are gone or changed by the same. */
export const holesAlike = (holes: readonly HoleDifference[]): Alike<HoleDifference>[] =>
  alike(holes, (difference) => [difference.kind, ...changeOf(difference)].join())

function changeOf(difference: HoleDifference): string[] {
  const { hole } = difference
  switch (difference.kind) {
    case 'added':
    case 'gone':
      return [um(hole.diameterMm), String(hole.plated)]
    case 'moved': {
      const [was, is] = [middleOf(difference.before), middleOf(hole)]
      return [um(is[0] - was[0]), um(is[1] - was[1])]
    }
    case 'resized':
      return [um(difference.before.diameterMm), um(hole.diameterMm)]
    case 'plating':
      return [String(difference.before.plated), String(hole.plated)]
  }
}

/** Rings that were as wide and are as wide, on whichever layer. */
export const ringsAlike = (rings: readonly RingDifference[]): Alike<RingDifference>[] =>
  alike(rings, ({ beforeMm, afterMm }) => [um(beforeMm), um(afterMm)].join())

export const gapsAlike = (gaps: readonly GapDifference[]): Alike<GapDifference>[] =>
  alike(gaps, ({ beforeMm, afterMm }) => [um(beforeMm), um(afterMm)].join())

/** Places of one matter whose verdict turned alike. */
export const turnedAlike = (turned: readonly TurnedFinding[]): Alike<TurnedPlace>[] =>
  turned.flatMap(({ places }) => alike(places, ({ before, after }) => [before, after].join()))

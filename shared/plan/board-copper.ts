import { COPPER_FOILS, type CopperFoilKey } from '@/shared/materials/copper-foils'
import type { ValueOf } from './parameter'
import type { ConductorRow } from './parameters/conductors'
import type { boardBuild } from './parameters/laminate'
import type { LeadHole } from './parameters/lead-holes'

/** What of the specification decides how much copper a finished layer has. */
export interface BoardCopper {
  readonly foil: CopperFoilKey
  readonly how: ValueOf<typeof boardBuild>
  /** Copper that plating the holes lays on the outer layers, µm; zero while that is not specified. */
  readonly platedUm: number
}

interface Specified {
  readonly foil: CopperFoilKey
  readonly how: ValueOf<typeof boardBuild> | undefined
  readonly holes: readonly LeadHole[] | undefined
  /** Metal on the wall, copper and finish, µm. */
  readonly wall: number | undefined
  readonly finishUm: number | undefined
  /** The most that the order allows the finish, µm. */
  readonly finishMostUm: number | undefined
  /** Copper on the wall that is ordered as such, µm. */
  readonly copperUm: number | undefined
}

/**
 * The copper on the wall of a plated hole that is sure, µm: as ordered, else the
 * metal on the wall less the most that the finish may take of it. Undefined
 * while neither is specified.
 */
export function sureBarrelUm({
  wall,
  finishUm,
  finishMostUm = finishUm,
  copperUm,
}: Pick<Specified, 'wall' | 'finishUm' | 'finishMostUm' | 'copperUm'>): number | undefined {
  if (copperUm !== undefined) return copperUm
  return wall === undefined || finishMostUm === undefined
    ? undefined
    : Number((wall - finishMostUm).toFixed(6))
}

/** The copper of a board as specified: plating lays about as much on the outer layers as on the walls. */
export function boardCopper({ foil, how = 'subtractive', holes, ...barrel }: Specified): BoardCopper {
  const plates = how === 'additive' || (holes?.some((row) => row.plated) ?? false)
  return { foil, how, platedUm: plates ? Math.max(0, sureBarrelUm(barrel) ?? 0) : 0 }
}

/**
 * The least copper of a finished layer, µm: what processing leaves of the foil, and
 * outside what plating lays on it. An outer layer that nothing is plated on is
 * cleaned and etched as an inner one is.
 */
export function minCopperUm(layer: ConductorRow['layer'], { foil, how, platedUm }: BoardCopper): number {
  const { innerUm, outerUm } = COPPER_FOILS[foil]
  if (layer === 'internal') return innerUm
  if (how === 'additive') return platedUm
  return platedUm > 0 ? outerUm + platedUm : innerUm
}

/** Less is no conductor. */
const THINNEST_UM = 1

/**
 * A conductor with no more copper than its layer has at least.
 * Throws RangeError where the board as specified has none on that layer.
 */
export function asFinished(row: ConductorRow, copper: BoardCopper): ConductorRow {
  const minUm = minCopperUm(row.layer, copper)
  if (!(minUm >= THINNEST_UM)) throw new RangeError('The board as specified has no copper on this layer.')
  return { ...row, copperUm: Math.min(row.copperUm, minUm) }
}

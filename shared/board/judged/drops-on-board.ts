import { COPPER_RESISTANCE } from '@/shared/materials/conductor-current-laws'
import { COPPER_FOILS } from '@/shared/materials/copper-foils'
import { riseByIpc2221 } from '@/shared/physics/conductor-current'
import { conductorResistanceOhm } from '@/shared/physics/conductor-resistance'
import { boardCopper, type BoardCopper } from '@/shared/plan/board-copper'
import { conductorDropGuard } from '@/shared/plan/limits/specification-guards'
import { conductors, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { serviceTemperature } from '@/shared/plan/parameters/laminate'
import { netClasses } from '@/shared/plan/parameters/net-classes'
import { formatQuantity } from '@/shared/quantity/format'
import { boardCopperReads } from '@/shared/rules/board-copper-reads'
import { undetermined, type Part } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import type { Board } from '../board'
import type { NetConductor } from '../net-conductors'
import type { NetLoad } from '../net-loads'
import type { NetPath } from '../net-paths'
import { copperOfLayer } from './copper-of-layer'
import type { PlacedPart } from './placed-part'
import { namingNothing, statedLoads } from './stated-loads'

/** Resistance and drop of every net that carries current, along its copper between its farthest pins. */
export const dropsOnBoard = ({ netPaths, netConductors, nets }: Board) =>
  rule({
    id: 'drops-on-board',
    title: 'Resistance along the board’s copper',
    why: 'A conductor is seldom of one width from end to end, and its resistance is that of every piece of the way.',
    formula:
      'R = ρ/t · Σ L/w over the lines between the two pins that lie farthest apart · (1 + α · (T − 20 °C)); I · R ≤ drop allowed',
    stage: 'specification',
    version: 1,
    reads: {
      classes: optional(netClasses),
      rows: optional(conductors),
      ...boardCopperReads,
      service: serviceTemperature,
      guard: conductorDropGuard,
    },
    judge({ classes, rows, service, guard, ...specified }) {
      const copper = boardCopper(specified)
      const loads = statedLoads(classes, rows)
      const stated = loads.classes.filter(({ currentA }) => currentA !== undefined)
      if (stated.length === 0) return undetermined('No net is stated to carry a current.', [netClasses.label])
      const carrying = nets.filter((net) => loads.loadOf(net).currentA !== undefined)
      const parts = carrying.map((net) => {
        const load = loads.loadOf(net)
        const path = longest(netPaths.filter((each) => each.net === net))
        return path
          ? partOrContradiction(net, () =>
              judgePath(path, load, {
                rows,
                copper,
                serviceC: service,
                share: guard.value / 100,
                narrowest: netConductors.filter((each) => each.net === net),
              }),
            )
          : notFollowed(net, load)
      })
      return judgedByParts({
        parts: [...parts, ...namingNothing(stated, nets)],
        noun: 'nets',
        limit: 'The drop each net is allowed',
        working: [],
        sources: [COPPER_RESISTANCE.source, COPPER_FOILS[copper.foil].source],
        notes: [
          'All of a net’s current is taken to flow all the way. Other ways beside it only lower the resistance; walls of holes and round lands on the way count as nothing, planes too.',
          'The copper counted is the least that the finished layer has; widths are as drawn.',
        ],
      })
    },
  })

const longest = (paths: readonly NetPath[]): NetPath | undefined =>
  paths.reduce<NetPath | undefined>(
    (most, path) => (!most || squaresOf(path) > squaresOf(most) ? path : most),
    undefined,
  )

const squaresOf = ({ squares }: NetPath): number => squares.external + squares.internal

interface Terms {
  readonly rows: readonly ConductorRow[] | undefined
  readonly copper: BoardCopper
  readonly serviceC: number
  /** Of the drop, kept free. */
  readonly share: number
  /** The net's narrowest conductor on each layer, by which it is warm. */
  readonly narrowest: readonly NetConductor[]
}

function judgePath(path: NetPath, { currentA = 0, dropMostMv }: NetLoad, terms: Terms): PlacedPart {
  const warmC = terms.serviceC + greatestRise(currentA, terms)
  const ohm = resistanceOhm(path, warmC, terms)
  const found = currentA * ohm * 1e3
  const said = {
    subject: path.net,
    measured: {
      resistance: measure(ohm * 1e3, 'mΩ'),
      at: measure(warmC, '°C'),
      drop: measure(found, 'mV'),
      length: measure(path.lengthMm, 'mm'),
    },
    found: `${formatQuantity(ohm * 1e3, 'mΩ', 3)} over ${formatQuantity(path.lengthMm, 'mm', 3)} and ${formatQuantity(squaresOf(path), '1', 3)} squares from ${path.from} to ${path.to} at ${formatQuantity(warmC, '°C', 3)}, a drop of ${formatQuantity(found, 'mV', 3)}${path.overPlane ? ', without the plane that it crosses' : ''}`,
  }
  const placed = { at: path.at, layer: path.layer, rank: -ohm }
  if (dropMostMv === undefined)
    return { ...said, ...placed, verdict: 'not applicable', found: `${said.found}; no drop is named` }
  const part = partOn({
    ...said,
    found: `${said.found}; allowed ${formatQuantity(dropMostMv, 'mV')}`,
    margin: {
      found,
      limit: dropMostMv,
      unit: 'mV',
      direction: 'at most',
      guardBand: terms.share * dropMostMv,
    },
  })
  if (part.verdict === 'meets' && path.overPlane) return { ...part, ...placed, verdict: 'undetermined' }
  if (part.verdict === 'meets') return { ...part, ...placed }
  const message = `${path.net}: lower the resistance to ${formatQuantity((dropMostMv * (1 - terms.share)) / currentA, 'mΩ', 3)}: widen or shorten the way, or use thicker copper.`
  return { ...part, ...placed, remedy: { message } }
}

/** Of the net's conductors, how warm the warmest gets, K. */
const greatestRise = (currentA: number, { narrowest, rows, copper }: Terms): number =>
  Math.max(
    0,
    ...narrowest.map((conductor) =>
      riseByIpc2221({ ...copperOfLayer(conductor, rows, copper), widthMm: conductor.widthMm }, currentA),
    ),
  )

const OUTER_AND_INNER = { external: 'top', internal: 'inner' } as const

/** Squares of each kind of layer through that layer's copper, in series. */
function resistanceOhm({ net, squares }: NetPath, warmC: number, { rows, copper }: Terms): number {
  return (['external', 'internal'] as const)
    .filter((side) => squares[side] > 0)
    .map((side) => {
      const { copperUm } = copperOfLayer({ net, layer: OUTER_AND_INNER[side] }, rows, copper)
      return conductorResistanceOhm({ lengthMm: squares[side], widthMm: 1, copperUm }, warmC)
    })
    .reduce((sum, ohm) => sum + ohm, 0)
}

const notFollowed = (net: string, { dropMostMv }: NetLoad): Part => ({
  subject: net,
  about: { net },
  verdict: dropMostMv === undefined ? 'not applicable' : 'undetermined',
  found: 'it has no two pins that are joined by copper, or too much copper to be followed',
})

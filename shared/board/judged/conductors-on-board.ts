import { COPPER_FOILS } from '@/shared/materials/copper-foils'
import { IPC_2152_RISE, IPC_2221_CURRENT } from '@/shared/materials/conductor-current-laws'
import type { Conductor } from '@/shared/physics/conductor-current'
import { CONDUCTOR_LAWS, hottestLaw, lawsFor, type ConductorLaw } from '@/shared/physics/conductor-laws'
import { boardCopper } from '@/shared/plan/board-copper'
import { conductorRiseMax } from '@/shared/plan/limits/conductors'
import { conductorRiseGuard } from '@/shared/plan/limits/specification-guards'
import { conductorMethod, conductors, WIDEST_CONDUCTOR_MM } from '@/shared/plan/parameters/conductors'
import { netClasses } from '@/shared/plan/parameters/net-classes'
import { formatQuantity } from '@/shared/quantity/format'
import { boardCopperReads } from '@/shared/rules/board-copper-reads'
import { undetermined, type Part } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { judgedByParts, partOn, partOrContradiction } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { optional, rule } from '@/shared/rules/rule'
import type { Board } from '../board'
import type { NetConductor } from '../net-conductors'
import { copperOfLayer } from './copper-of-layer'
import { inMm } from './in-words'
import type { PlacedPart } from './placed-part'
import { namingNothing, statedLoads } from './stated-loads'

const WIDTH_STEP_MM = 0.05

/** The narrowest conductor of every net that carries current, on every layer. */
export const conductorsOnBoard = ({ netConductors, nets }: Board) =>
  rule({
    id: 'conductors-on-board',
    title: 'The board’s conductors for their current',
    why: 'The table lists the conductor that somebody took for the narrowest. What runs hot is the one that is.',
    formula: 'rise of the narrowest line of each net and layer by the laws of the conductor table ≤ most',
    stage: 'specification',
    version: 1,
    reads: {
      classes: optional(netClasses),
      rows: optional(conductors),
      ...boardCopperReads,
      rise: conductorRiseMax,
      method: optional(conductorMethod),
      guard: conductorRiseGuard,
    },
    judge({ classes, rows, rise, method, guard, ...specified }) {
      const copper = boardCopper(specified)
      const loads = statedLoads(classes, rows)
      const stated = loads.classes.filter(({ currentA }) => currentA !== undefined)
      if (stated.length === 0) return undetermined('No net is stated to carry a current.', [netClasses.label])
      const terms = { riseK: rise.value, share: guard.value / 100, laws: lawsFor(method) }
      const judged = netConductors.flatMap((conductor) => {
        const { currentA } = loads.loadOf(conductor.net)
        if (currentA === undefined) return []
        const subject = `${conductor.net}, ${conductor.layer}`
        return [
          partOrContradiction(subject, () => {
            const found = { ...copperOfLayer(conductor, rows, copper), widthMm: conductor.widthMm }
            return judgeConductor(conductor, found, currentA, terms)
          }),
        ]
      })
      return judgedByParts({
        parts: [
          ...judged,
          ...withoutLines(nets, netConductors, (net) => loads.loadOf(net).currentA !== undefined),
          ...namingNothing(stated, nets),
        ],
        noun: 'conductors',
        limit: `At most ${formatQuantity(rise.value, 'K')} over the board (${rise.document})`,
        working: [],
        sources: [IPC_2221_CURRENT.source, IPC_2152_RISE.source, COPPER_FOILS[copper.foil].source],
        notes: [
          'All of a net’s current is taken to flow through its narrowest line, wherever that is: a branch that carries less is to be a net of its own, or looked at.',
          'A neck shorter than it is wide is left out, since what it joins cools it; necks of planes are not looked for.',
        ],
      })
    },
  })

interface Terms {
  readonly riseK: number
  /** Of the rise, kept free. */
  readonly share: number
  readonly laws: readonly ConductorLaw[]
}

function judgeConductor(
  { net, layer, lengthMm, at, ends }: NetConductor,
  conductor: Conductor,
  currentA: number,
  { riseK, share, laws }: Terms,
): PlacedPart {
  const law = hottestLaw(conductor, currentA, laws)
  const found = CONDUCTOR_LAWS[law].rise(conductor, currentA)
  const part = partOn({
    subject: `${net}, ${layer}`,
    measured: {
      current: measure(currentA, 'A'),
      width: measure(conductor.widthMm, 'mm'),
      copper: measure(conductor.copperUm, 'µm'),
      law,
    },
    found: `${formatQuantity(currentA, 'A')} in ${inMm(conductor.widthMm)} of ${formatQuantity(conductor.copperUm, 'µm', 3)}, so narrow for ${formatQuantity(lengthMm, 'mm', 3)}, warm it by ${formatQuantity(found, 'K', 3)} (${CONDUCTOR_LAWS[law].label})`,
    margin: { found, limit: riseK, unit: 'K', direction: 'at most', guardBand: share * riseK },
  })
  const placed = { at, layer, ends, rank: conductor.widthMm }
  if (part.verdict === 'meets') return { ...part, ...placed }
  const aimK = riseK * (1 - share)
  const widthMm = stepAbove(
    Math.max(...laws.map((key) => CONDUCTOR_LAWS[key].width(conductor, currentA, aimK))),
    WIDTH_STEP_MM,
  )
  const message =
    widthMm > WIDEST_CONDUCTOR_MM
      ? `${net}: no conductor of ${WIDEST_CONDUCTOR_MM} mm or less stays cool enough: use thicker copper, share the current, or use a bar or a wire.`
      : `${net}: widen it to ${formatQuantity(widthMm, 'mm')} in the layout.`
  return { ...part, ...placed, remedy: { message } }
}

/** Nets that carry current and have no line: their copper is planes. */
function withoutLines(
  nets: readonly string[],
  lines: readonly NetConductor[],
  carries: (net: string) => boolean,
): Part[] {
  const drawn = new Set(lines.map(({ net }) => net))
  return nets
    .filter((net) => !drawn.has(net) && carries(net))
    .map((net) => ({
      subject: net,
      about: { net },
      verdict: 'undetermined',
      found: 'it has no line, only lands and planes: look at its narrowest place',
    }))
}

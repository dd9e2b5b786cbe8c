import { SPACING_TABLES, type SpacingEdition } from '@/shared/materials/conductor-spacings'
import { voltageSpacingGuard } from '@/shared/plan/limits/specification-guards'
import { netClasses, type NetClass } from '@/shared/plan/parameters/net-classes'
import { spacingEdition, spacings, WIDEST_GAP_MM, type SpacingRow } from '@/shared/plan/parameters/spacings'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, type Part } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { stepAbove } from '@/shared/rules/remedy'
import { optional, rule } from '@/shared/rules/rule'
import { GAP_REACH_MM, type Board } from '../board'
import type { NetGap } from '../gaps'
import { netLoad, spread, voltageBetween } from '../net-loads'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'
import { categoriesOf, editionsFor, spacingAsked, type SpacingAsked } from './spacing-asked'
import { namingNothing } from './stated-loads'

const GAP_STEP_MM = 0.05

/** Every gap between two nets with a voltage against what that voltage asks. */
export const voltagesOnBoard = ({ gaps, layers, nets, watched }: Board) =>
  rule({
    id: 'voltages-on-board',
    title: 'Gaps for the voltage between two nets',
    why: 'The closest spacing of a board is harmless between two signals and a fault between two others.',
    formula:
      'gap between two nets ≥ row of the spacing table at the greatest voltage that they can have between them',
    stage: 'specification',
    version: 1,
    reads: {
      classes: optional(netClasses),
      rows: optional(spacings),
      edition: optional(spacingEdition),
      guard: voltageSpacingGuard,
    },
    judge({ classes = [], rows = [], edition, guard }) {
      const stated = classes.filter(({ voltageV }) => voltageV !== undefined)
      if (stated.length === 0) return undetermined('No net is stated to have a voltage.', [netClasses.label])
      const terms = { stated, rows, editions: editionsFor(edition), share: guard.value / 100 }
      const parts = layers.flatMap((layer) =>
        judgeLayer(
          layer,
          { gaps: gaps.filter((gap) => gap.layer === layer), nets, reachMm: reachOf(watched) },
          terms,
        ),
      )
      return judgedByParts({
        parts: [...parts, ...namingNothing(stated, nets)],
        noun: 'gaps',
        limit: terms.editions.map((key) => SPACING_TABLES[key].label).join(' and '),
        working: [],
        sources: terms.editions.map((key) => SPACING_TABLES[key].source),
        notes: [
          'Two nets have the greatest voltage between them that their rows allow. A net without a voltage is held against the closest spacing stated, above.',
          'Outside, the kind of spacing is the one of those in the table of spacings that asks most, leads aside; inside it is B1.',
        ],
        cautions: [
          'The table is for function and is no safety standard. Insulation that people rely on is judged by the product’s safety standard and a competent person.',
        ],
      })
    },
  })

const reachOf = (watched: Board['watched']): number => Math.max(GAP_REACH_MM, watched?.reachMm ?? 0)

interface Terms {
  readonly stated: readonly NetClass[]
  readonly rows: readonly SpacingRow[]
  readonly editions: readonly SpacingEdition[]
  /** Of what is asked, kept free. */
  readonly share: number
}

interface LayerGaps {
  readonly gaps: readonly NetGap[]
  readonly nets: readonly string[]
  readonly reachMm: number
}

function judgeLayer(layer: string, { gaps, nets, reachMm }: LayerGaps, terms: Terms): Part[] {
  const categories = categoriesOf(layer, terms.rows)
  const onLayer = { subject: layer, about: { layer } }
  if (categories.length === 0)
    return [{ ...onLayer, verdict: 'undetermined', found: 'no kind of spacing is stated for such a layer' }]
  const askedOf = (volts: number): SpacingAsked => spacingAsked(volts, categories, terms.editions)!
  const near = gaps.flatMap((gap): Part[] => {
    const volts = between(gap.nets, terms.stated)
    return volts === undefined ? [] : [judgeGap(gap, volts, askedOf(volts), terms.share)]
  })
  const needed = askedOf(greatest(nets, terms.stated)).mm * (1 + terms.share)
  if (needed > reachMm + 1e-9)
    near.push({
      ...onLayer,
      verdict: 'undetermined',
      found: `gaps were looked for up to ${inMm(reachMm)}, and ${inMm(needed)} is asked with its guard band`,
    })
  return near.length > 0
    ? near
    : [{ ...onLayer, verdict: 'meets', found: `no two such nets come nearer than ${inMm(reachMm)}` }]
}

function between([one, other]: NetGap['nets'], stated: readonly NetClass[]): number | undefined {
  const [a, b] = [netLoad(one, stated).voltage, netLoad(other, stated).voltage]
  return a && b && voltageBetween(a, b)
}

/** The greatest voltage that any two nets of the board have between them, V. */
const greatest = (nets: readonly string[], stated: readonly NetClass[]): number =>
  spread(nets.flatMap((net) => netLoad(net, stated).voltage ?? []))

function judgeGap(
  { nets, layer, gapMm, at, ends }: NetGap,
  volts: number,
  asked: SpacingAsked,
  share: number,
): PlacedPart {
  const part = partOn({
    subject: `${nets.join(' to ')}, ${layer}`,
    measured: { voltage: measure(volts, 'V'), category: asked.category, edition: asked.edition },
    found: `${inMm(gapMm)} at ${formatQuantity(volts, 'V')}, ${asked.category} asks ${inMm(asked.mm)} (${SPACING_TABLES[asked.edition].label})`,
    margin: {
      found: toMicrometre(gapMm),
      limit: asked.mm,
      unit: 'mm',
      direction: 'at least',
      guardBand: share * asked.mm,
    },
  })
  const placed = { at, layer, ends, rank: gapMm }
  if (part.verdict === 'meets') return { ...part, ...placed }
  const value = stepAbove(asked.mm * (1 + share), GAP_STEP_MM)
  const message =
    value > WIDEST_GAP_MM
      ? `${nets.join(' to ')}: no gap on a board is wide enough: keep the voltage off the board, coat it, or part the two by a barrier.`
      : `${nets.join(' to ')}: open the gap to ${formatQuantity(value, 'mm')} in the layout.`
  return { ...part, ...placed, remedy: { message } }
}

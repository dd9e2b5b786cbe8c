import {
  SPACING_TABLES,
  type SpacingCategory,
  type SpacingEdition,
} from '@/shared/materials/conductor-spacings'
import { minSpacingMm } from '@/shared/physics/conductor-spacing'
import { voltageSpacingGuard } from '@/shared/plan/limits/specification-guards'
import { netClasses, type NetClass } from '@/shared/plan/parameters/net-classes'
import { spacingEdition, spacings, type SpacingRow } from '@/shared/plan/parameters/spacings'
import { governingRequirement } from '@/shared/plan/requirement'
import type { Facts } from '@/shared/rules/facts'
import { spansOf, spread } from '../net-loads'
import type { WatchedNets } from '../watched-nets'
import { sideOfLayer } from './copper-of-layer'

/** Category B1 is that of conductors inside a board, A6 and A7 those of leads (IPC-2221, Table 6-1). */
const INSIDE: SpacingCategory = 'B1'
const OF_LEADS: readonly SpacingCategory[] = ['A6', 'A7']

/** The kinds of spacing that a layer's copper has: inside one, outside those of the table of spacings. */
export const categoriesOf = (layer: string, rows: readonly SpacingRow[]): SpacingCategory[] =>
  sideOfLayer(layer) === 'internal'
    ? [INSIDE]
    : [...new Set(rows.map(({ category }) => category))].filter(
        (category) => category !== INSIDE && !OF_LEADS.includes(category),
      )

export interface SpacingAsked {
  readonly mm: number
  readonly category: SpacingCategory
  readonly edition: SpacingEdition
}

export const editionsFor = (chosen: SpacingEdition | undefined): readonly SpacingEdition[] =>
  chosen ? [chosen] : ['ipc-2221', 'ipc-d-275']

/** The widest spacing that any of the kinds and editions asks at a voltage; undefined where there is no kind. */
export function spacingAsked(
  peakV: number,
  categories: readonly SpacingCategory[],
  editions: readonly SpacingEdition[],
): SpacingAsked | undefined {
  return categories
    .flatMap((category) =>
      editions.map((edition) => ({
        mm: Number(minSpacingMm(SPACING_TABLES[edition], category, peakV).toFixed(7)),
        category,
        edition,
      })),
    )
    .reduce<SpacingAsked | undefined>((most, each) => (!most || each.mm > most.mm ? each : most), undefined)
}

/** Between which nets, and how far, gaps have to be looked for, so that each is judged for its voltage. */
export function netsToWatch({ values, requirements }: Facts): WatchedNets | undefined {
  const all = (values.get(netClasses.key) ?? []) as readonly NetClass[]
  const classes = all.filter(({ voltageV }) => voltageV !== undefined)
  if (classes.length === 0) return undefined
  const rows = (values.get(spacings.key) ?? []) as readonly SpacingRow[]
  const categories = [INSIDE, ...categoriesOf('top', rows)]
  const editions = editionsFor(values.get(spacingEdition.key) as SpacingEdition | undefined)
  const asked = spacingAsked(greatestVoltage(classes), categories, editions)
  const guard = governingRequirement(voltageSpacingGuard, requirements).value / 100
  return { names: classes.map(({ nets }) => nets).join(','), reachMm: asked!.mm * (1 + guard) }
}

const greatestVoltage = (classes: readonly NetClass[]): number => spread(classes.flatMap(spansOf))

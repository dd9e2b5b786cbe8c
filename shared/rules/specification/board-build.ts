import { COPPER_FOILS, leastFoilUm, type CopperFoilKey } from '@/shared/materials/copper-foils'
import { commonPractice, computed } from '@/shared/sources/provenance'
import { conductors, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { boardFinishLeast } from '@/shared/plan/parameters/finishes'
import { boardBuild, copperFoil, copperLayers } from '@/shared/plan/parameters/laminate'
import { holeWall, leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { ValueOf } from '@/shared/plan/parameter'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy, WorkingLine } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { stepBelow } from '@/shared/rules/remedy'
import { optional, rule } from '@/shared/rules/rule'

/** Cleaning and etching take a little more: a twentieth is kept free. */
const GUARD_SHARE = 0.05

interface Build {
  readonly foil: CopperFoilKey
  readonly layers: number
  readonly how: ValueOf<typeof boardBuild>
  /** Copper that plating lays on the outer layers, µm. */
  readonly platedUm: number
}

export const boardBuildRule = rule({
  id: 'board-build',
  title: 'Layers and copper of the board',
  why: 'A conductor reckoned in copper that the board will not have runs hotter and drops more than was judged; a barrel or an inner conductor needs layers to join.',
  stage: 'specification',
  version: 1,
  reads: {
    foil: copperFoil,
    layers: copperLayers,
    how: optional(boardBuild),
    holes: leadHoles,
    wall: holeWall,
    finishUm: boardFinishLeast,
    conductors,
  },
  judge({ foil, layers, how = 'subtractive', holes, wall, finishUm, conductors: rows }) {
    const plated = holes.some((row) => row.plated)
    const platedUm = plated || how === 'additive' ? Math.max(0, wall - finishUm) : 0
    const build: Build = { foil, layers, how, platedUm }
    return judgedByParts({
      parts: [...barrels(layers, plated), ...rows.map((row, index) => judgeConductor(row, index, build))],
      noun: 'points',
      limit:
        'Layers for every barrel and inner conductor, and no more copper counted on than foil and plating give at least',
      working: workingOf(build),
      sources: [
        COPPER_FOILS[foil].source,
        computed('Least mass of the foil a square metre over 8.96 g/cm³'),
        commonPractice('Plating of the holes lays about as much on the outer layers, and none inside'),
      ],
      notes: [
        how === 'additive'
          ? 'Built up without current: the outer layers have no foil, only what is laid on.'
          : 'Foil is sold by mass: one of nominal 35 µm measures 31 to 33 µm.',
      ],
    })
  },
})

/** A barrel joins two layers at least. */
const barrels = (layers: number, plated: boolean): Part[] =>
  plated && layers < 2
    ? [
        {
          subject: 'Plated holes',
          about: { matter: 'plated holes' },
          verdict: 'fails',
          measured: { layers: count(layers) },
          found: 'the board has copper on one side only, and barrels join nothing',
          remedy: {
            says: 'Give the board a second layer, or leave the holes unplated.',
            parameter: copperLayers.key,
            value: 2,
          },
        },
      ]
    : []

/** The least copper on an outer or an inner layer, µm. */
function availableUm(layer: ConductorRow['layer'], { foil, how, platedUm }: Build): number {
  const foilUm = leastFoilUm(COPPER_FOILS[foil])
  if (layer === 'internal') return foilUm
  return how === 'additive' ? platedUm : foilUm + platedUm
}

function judgeConductor(row: ConductorRow, index: number, build: Build): Part {
  if (row.layer === 'internal' && build.layers < 3) {
    return {
      subject: row.net,
      verdict: 'fails',
      measured: { layer: row.layer, layers: count(build.layers) },
      found: `lies inside the board, which has ${build.layers === 1 ? 'one layer' : 'two layers'} outside`,
      remedy: { says: `${row.net}: lead it outside, or give the board inner layers.` },
    }
  }
  const available = Number(availableUm(row.layer, build).toFixed(3))
  const part = partOn({
    subject: row.net,
    measured: { layer: row.layer },
    found: `${row.layer}, counts on ${formatQuantity(row.copperUm, 'µm')}; at least ${formatQuantity(available, 'µm', 3)} are there`,
    margin: {
      found: row.copperUm,
      limit: available,
      unit: 'µm',
      direction: 'at most',
      guardBand: GUARD_SHARE * available,
    },
  })
  const value = stepBelow(available * (1 - GUARD_SHARE), 1)
  if (part.verdict === 'meets' || !(value >= 5)) return part
  const remedy: Remedy = {
    says: `${row.net}: count on ${formatQuantity(value, 'µm')}, or order thicker foil.`,
    cell: { parameter: conductors.key, row: index, column: 'copperUm', value },
  }
  return { ...part, remedy }
}

function workingOf(build: Build): WorkingLine[] {
  const { areaGm2, belowGm2 } = COPPER_FOILS[build.foil]
  return [
    {
      label: 'Foil, at least',
      formula: '(mass a square metre − tolerance)/8.96 g/cm³',
      numbers: `(${areaGm2} − ${belowGm2}) g/m²`,
      result: formatQuantity(leastFoilUm(COPPER_FOILS[build.foil]), 'µm', 3),
    },
    {
      label: 'Laid on outside by plating the holes',
      formula: 'metal on the wall − finish',
      result: formatQuantity(build.platedUm, 'µm', 3),
    },
    {
      label: 'Outer layers, at least',
      formula: build.how === 'additive' ? 'laid on' : 'foil + laid on',
      result: formatQuantity(availableUm('external', build), 'µm', 3),
    },
    {
      label: 'Inner layers, at least',
      formula: 'foil',
      result: formatQuantity(availableUm('internal', build), 'µm', 3),
    },
  ]
}

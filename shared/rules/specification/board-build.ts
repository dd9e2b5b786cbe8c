import { COPPER_FOILS } from '@/shared/materials/copper-foils'
import { commonPractice } from '@/shared/sources/provenance'
import { boardCopper, minCopperUm, type BoardCopper } from '@/shared/plan/board-copper'
import { conductorCopperGuard } from '@/shared/plan/limits/specification-guards'
import { conductors, type ConductorRow } from '@/shared/plan/parameters/conductors'
import { boardFinishMax, boardFinishMin } from '@/shared/plan/parameters/finishes'
import { boardBuild, copperFoil, copperLayers } from '@/shared/plan/parameters/laminate'
import { barrelCopper, barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy, WorkingLine } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { stepBelow } from '@/shared/rules/remedy'
import { optional, rule } from '@/shared/rules/rule'

interface Build extends BoardCopper {
  readonly layers: number
  /** Of what is there, kept free. */
  readonly share: number
}

export const boardBuildRule = rule({
  id: 'board-build',
  title: 'Layers and copper of the board',
  why: 'A conductor calculated in copper that the board will not have runs hotter and drops more than was judged; a barrel or an inner conductor needs layers to join.',
  formula:
    'copper counted on ≤ foil after processing, outside + copper laid on by plating; barrels join two layers at least',
  stage: 'specification',
  version: 3,
  reads: {
    foil: copperFoil,
    layers: copperLayers,
    how: optional(boardBuild),
    holes: leadHoles,
    wall: barrelPlating,
    finishUm: boardFinishMin,
    finishMostUm: optional(boardFinishMax),
    copperUm: optional(barrelCopper),
    conductors,
    guard: conductorCopperGuard,
  },
  judge({ foil, layers, how = 'subtractive', holes, conductors: rows, guard, ...barrel }) {
    const plated = holes.some((row) => row.plated)
    const build: Build = {
      ...boardCopper({ foil, how, holes, ...barrel }),
      layers,
      share: guard.value / 100,
    }
    return judgedByParts({
      parts: [...barrels(layers, plated), ...rows.map((row, index) => judgeConductor(row, index, build))],
      noun: 'points',
      limit:
        'Layers for every barrel and inner conductor, and no more copper counted on than foil and plating give at least',
      working: workingOf(build),
      sources: [
        COPPER_FOILS[foil].source,
        commonPractice('Plating of the holes lays about as much on the outer layers, and none inside'),
      ],
      notes: [
        how === 'additive'
          ? 'Built up without current: the outer layers have no foil, only what is laid on.'
          : 'Foil may be bought a tenth below its nominal mass, and cleaning and etching take more: what is left at least is counted.',
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
            message: 'Give the board a second layer, or leave the holes unplated.',
            parameter: copperLayers.key,
            value: 2,
          },
        },
      ]
    : []

function judgeConductor(row: ConductorRow, index: number, build: Build): Part {
  if (row.layer === 'internal' && build.layers < 3) {
    return {
      subject: row.net,
      verdict: 'fails',
      measured: { layer: row.layer, layers: count(build.layers) },
      found: `lies inside the board, which has ${build.layers === 1 ? 'one layer' : 'two layers'} outside`,
      remedy: { message: `${row.net}: lead it outside, or give the board inner layers.` },
    }
  }
  const available = Number(minCopperUm(row.layer, build).toFixed(3))
  const part = partOn({
    subject: row.net,
    measured: { layer: row.layer },
    found: `${row.layer}, counts on ${formatQuantity(row.copperUm, 'µm')}; at least ${formatQuantity(available, 'µm', 3)} are there`,
    margin: {
      found: row.copperUm,
      limit: available,
      unit: 'µm',
      direction: 'at most',
      guardBand: build.share * available,
    },
  })
  const value = stepBelow(available * (1 - build.share), 1)
  if (part.verdict === 'meets' || !(value >= 5)) return part
  const remedy: Remedy = {
    message: `${row.net}: count on ${formatQuantity(value, 'µm')}, or order thicker foil.`,
    cell: { parameter: conductors.key, row: index, column: 'copperUm', value },
  }
  return { ...part, remedy }
}

function workingOf(build: Build): WorkingLine[] {
  const { boughtUm, innerUm } = COPPER_FOILS[build.foil]
  return [
    {
      label: 'Foil, at least',
      formula: 'nominal − a tenth of its mass; on an inner layer less what processing takes',
      numbers: `${formatQuantity(boughtUm, 'µm', 3)} as bought`,
      result: formatQuantity(innerUm, 'µm', 3),
    },
    {
      label: 'Laid on outside by plating the holes',
      formula: 'copper ordered on the wall, else metal on the wall − most of the finish',
      result: formatQuantity(build.platedUm, 'µm', 3),
    },
    {
      label: 'Outer layers, at least',
      formula: build.how === 'additive' ? 'laid on' : 'foil after processing + laid on',
      result: formatQuantity(minCopperUm('external', build), 'µm', 3),
    },
    {
      label: 'Inner layers, at least',
      formula: 'foil after processing',
      result: formatQuantity(minCopperUm('internal', build), 'µm', 3),
    },
  ]
}

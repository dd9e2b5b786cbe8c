import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { COPPER_FOILS } from '@/shared/materials/copper-foils'
import { LAMINATES, type Laminate } from '@/shared/materials/laminates'
import { copperFoil, laminate } from '@/shared/plan/parameters/laminate'
import { formatNumber } from '@/shared/quantity/format'
import { valueOf } from '../value-of'
import { numbers, texts, type ReferenceTable } from './reference-table'

/** Grades of base material. */
export const laminateTables = (view: ProgrammeView): ReferenceTable[] => {
  const chosen = valueOf(view, laminate)
  const foilChosen = valueOf(view, copperFoil)
  return [
    {
      caption: 'laminate grades',
      note: 'Values of one grade differ between makers: a certificate in hand rules over the table.',
      columns: [
        ...texts('Grade', 'Plated holes'),
        ...numbers('Glass transition, °C', 'Works up to, °C', 'Grows through, ppm/K', 'In plane, ppm/K'),
        ...texts('Floats on solder', 'Flammability', 'Lead-free heat'),
      ],
      rows: Object.entries(LAMINATES).map(([key, row]) => rowOf(row, key === chosen)),
    },
    {
      caption: 'copper foils',
      columns: [
        ...texts('Nominal'),
        ...numbers('As bought, at least, µm', 'Inner layer, finished, µm', 'Outer layer before plating, µm'),
      ],
      rows: Object.entries(COPPER_FOILS).map(([key, foil]) => ({
        chosen: key === foilChosen,
        source: foil.source,
        cells: [
          foil.label,
          formatNumber(foil.boughtUm, 3),
          formatNumber(foil.innerUm, 3),
          formatNumber(foil.outerUm, 3),
        ],
      })),
    },
  ]
}

const rowOf = (grade: Laminate, chosen: boolean) => ({
  chosen,
  source: grade.source,
  cells: [
    grade.label,
    grade.platedHoles,
    formatNumber(grade.glassTransitionC),
    formatNumber(grade.maxOperatingC),
    grade.throughExpansionPpmK
      ? `${grade.throughExpansionPpmK.below}, above ${grade.throughExpansionPpmK.above}`
      : '–',
    grade.inPlaneExpansionPpmK === undefined ? '–' : formatNumber(grade.inPlaneExpansionPpmK),
    grade.solderFloat.map(({ temperatureC, seconds }) => `${seconds} s at ${temperatureC} °C`).join(', '),
    grade.flammability,
    grade.leadFree ? 'yes' : 'no',
  ],
})

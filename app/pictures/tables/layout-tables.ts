import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { IPC_2152_RISE, IPC_2221_CURRENT, type RiseFit } from '@/shared/materials/conductor-current-laws'
import {
  SPACING_CATEGORIES,
  SPACING_TABLES,
  type SpacingCategory,
  type SpacingTable,
} from '@/shared/materials/conductor-spacings'
import { FILL_EDITIONS } from '@/shared/materials/hole-fill'
import { HOLE_ALLOWANCES } from '@/shared/materials/hole-allowances'
import { BREAKOUT_BY_CLASS, LAND_EDITIONS } from '@/shared/materials/land-allowances'
import { DRILL_SERIES } from '@/shared/materials/preferred-drills'
import { fillEdition } from '@/shared/plan/parameters/joint-geometry'
import { drillSeries, landEdition, producibilityLevel } from '@/shared/plan/parameters/lead-holes'
import { productClass } from '@/shared/plan/parameters/programme'
import { spacingEdition } from '@/shared/plan/parameters/spacings'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { valueOf } from '../value-of'
import { numbers, texts, type ReferenceRow, type ReferenceTable } from './reference-table'

const CATEGORIES = Object.keys(SPACING_CATEGORIES) as SpacingCategory[]

/** Spacing by voltage and kind in both editions, and the constants of both current fits. */
export const conductorTables = (view: ProgrammeView): ReferenceTable[] => {
  const edition = valueOf(view, spacingEdition)
  return [
    ...Object.entries(SPACING_TABLES).map(([key, table]) => spacingTable(table, key === edition)),
    {
      caption: 'fits of current and rise',
      columns: texts('Fit', 'Law', 'Constants'),
      rows: [
        {
          cells: [
            'IPC-2221',
            'I = k · ΔT^0.44 · A^0.725, A in square mils',
            `k = ${IPC_2221_CURRENT.factor.external} outside, ${IPC_2221_CURRENT.factor.internal} inside; up to ${IPC_2221_CURRENT.maxCurrentA.external} A and ${IPC_2221_CURRENT.maxWidthMil} mil`,
          ],
          source: IPC_2221_CURRENT.source,
        },
        fitRow('IPC-2152, outside', IPC_2152_RISE.external),
        ...IPC_2152_RISE.internal.map((fit) => fitRow(`IPC-2152, inside, ${fit.ounces} oz`, fit)),
      ],
    },
  ]
}

const spacingTable = ({ label, rows, perVoltMm, source }: SpacingTable, chosen: boolean): ReferenceTable => ({
  caption: `least gaps by ${label}, mm${chosen ? ' (as specified)' : ''}`,
  note: CATEGORIES.map((key) => `${key} ${SPACING_CATEGORIES[key].toLowerCase()}`).join('; '),
  columns: [...texts('Voltage up to'), ...numbers(...CATEGORIES)],
  rows: [
    ...rows.map((row) => ({
      cells: [formatQuantity(row.upToV, 'V'), ...CATEGORIES.map((key) => formatNumber(row[key]))],
      source,
    })),
    {
      cells: ['each volt above 500', ...CATEGORIES.map((key) => formatNumber(perVoltMm[key]))],
      source,
    },
  ],
})

const fitRow = (name: string, fit: RiseFit): ReferenceRow => ({
  cells: [
    name,
    'ΔT = K · I^a · W^b · T^c, W and T in mils',
    `K = ${fit.factor}, a = ${fit.currentExponent}, b = ${fit.widthExponent}, c = ${fit.thicknessExponent}`,
  ],
  source: IPC_2152_RISE.source,
})

/** Allowances of holes and lands by level and edition, breakout by class, and the drill series. */
export const holeTables = (view: ProgrammeView): ReferenceTable[] => {
  const level = valueOf(view, producibilityLevel)
  const edition = valueOf(view, landEdition)
  const series = valueOf(view, drillSeries)
  const grade = valueOf(view, productClass)
  return [
    {
      caption: 'hole for its lead by producibility level',
      columns: [
        ...texts('Level'),
        ...numbers('Least hole over largest lead, mm', 'Largest hole over least lead, mm'),
      ],
      rows: Object.entries(HOLE_ALLOWANCES).map(([key, row]) => ({
        chosen: key === level,
        cells: [row.label, formatNumber(row.minOverMaxMm), formatNumber(row.maxOverMinMm)],
        source: row.source,
      })),
    },
    {
      caption: 'land allowance by edition',
      columns: [...texts('Edition', 'Added to'), ...numbers('Level A, mm', 'Level B, mm', 'Level C, mm')],
      rows: Object.entries(LAND_EDITIONS).map(([key, { label, over, allowanceMm, source }]) => ({
        chosen: key === edition,
        cells: [label, over, ...(['A', 'B', 'C'] as const).map((each) => formatNumber(allowanceMm[each]))],
        source,
      })),
    },
    {
      caption: 'breakout of a delivered hole by class',
      columns: texts('Class', 'Allowed'),
      rows: Object.entries(BREAKOUT_BY_CLASS).map(([key, { allowed, source }]) => ({
        chosen: key === grade,
        cells: [key, allowed],
        source,
      })),
    },
    {
      caption: 'preferred drills',
      columns: [...texts('Series'), ...numbers('Sizes', 'From, mm', 'To, mm')],
      rows: Object.entries(DRILL_SERIES).map(([key, { label, sizesMm, source }]) => ({
        chosen: key === series,
        cells: [
          label,
          formatNumber(sizesMm.length),
          formatNumber(sizesMm[0] ?? NaN),
          formatNumber(sizesMm.at(-1) ?? NaN),
        ],
        source,
      })),
    },
  ]
}

/** The fill that editions ask of a plated hole. */
export const fillTables = (view: ProgrammeView): ReferenceTable[] => {
  const edition = valueOf(view, fillEdition)
  return [
    {
      caption: 'hole fill by edition',
      columns: [...texts('Edition'), ...numbers('Class 1, %', 'Class 2, %', 'Class 3, %')],
      rows: Object.entries(FILL_EDITIONS).map(([key, { label, minPct, source }]) => ({
        chosen: key === edition,
        cells: [
          label,
          ...(['1', '2', '3'] as const).map((grade) => {
            const asked = minPct[grade]
            return asked === undefined ? 'none' : formatNumber(asked)
          }),
        ],
        source,
      })),
    },
  ]
}

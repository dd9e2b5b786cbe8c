import { optionsOf } from '@/shared/columns/choice-options'
import { choiceColumn, numberColumn, optionalColumn, textColumn, type RowOf } from '@/shared/columns/column'
import { FLOOR_LIFE } from '@/shared/materials/moisture-sensitivity'
import { coatingColumns } from '@/shared/plan/parameters/finishes'
import { leadColumns } from '@/shared/plan/parameters/lead-holes'
import { PART_KINDS } from '@/shared/works/part-kind'

/**
 * The values of a part, declared once: forms, cells, files, prints and comparisons follow. Leads and coatings are said
 * as the hole table and the table of finishes say them. What no data sheet says stays open.
 */
export const PART_COLUMNS = {
  description: textColumn({
    label: 'Description',
    maxLength: 160,
    alsoCalled: ['Value', 'Designation', 'Name'],
  }),
  kind: choiceColumn({ label: 'Kind', options: optionsOf(PART_KINDS) }),
  leads: optionalColumn(
    numberColumn({
      label: 'Leads',
      unit: '1',
      min: 1,
      max: 2000,
      whole: true,
      help: 'Joints that one piece has on the board.',
      alsoCalled: ['Pins', 'Terminations'],
    }),
  ),
  leadShape: optionalColumn(leadColumns.leadShape),
  leadMm: optionalColumn(leadColumns.leadMm),
  leadThicknessMm: leadColumns.leadThicknessMm,
  leadToleranceMm: optionalColumn(leadColumns.leadToleranceMm),
  base: optionalColumn(coatingColumns.base),
  barrier: optionalColumn(coatingColumns.barrier),
  barrierUm: coatingColumns.barrierUm,
  coating: optionalColumn(coatingColumns.coating),
  coatingUm: optionalColumn(coatingColumns.coatingUm),
  coatingMostUm: coatingColumns.coatingMostUm,
  annealed: coatingColumns.annealed,
  heatMaxC: optionalColumn(
    numberColumn({
      label: 'Soldering heat borne, at most',
      unit: '°C',
      min: 100,
      max: 500,
      help: 'At the leads, as the maker states it.',
    }),
  ),
  heatMaxS: optionalColumn(
    numberColumn({
      label: 'For at most',
      unit: 's',
      min: 0.5,
      max: 600,
      help: 'How long it bears that heat in one soldering.',
    }),
  ),
  moistureLevel: optionalColumn(
    choiceColumn({
      label: 'Moisture sensitivity level',
      options: FLOOR_LIFE.map(({ level }) => ({ value: level, label: `Level ${level}` })),
      help: 'From the label of its dry pack (J-STD-020).',
    }),
  ),
  note: optionalColumn(textColumn({ label: 'Note', maxLength: 300 })),
}

export type PartValues = RowOf<typeof PART_COLUMNS>

/** What contradicts itself among a part's values, by column; empty where nothing does. */
export function partFaults(values: PartValues): Readonly<Record<string, string>> {
  const { leadMm, leadShape, leadThicknessMm, coatingUm, coatingMostUm, heatMaxC, heatMaxS } = values
  return {
    ...(leadMm !== undefined && leadShape === undefined && { leadShape: 'Say of which shape the lead is.' }),
    ...(leadThicknessMm !== undefined &&
      leadMm !== undefined &&
      leadThicknessMm > leadMm && { leadThicknessMm: 'The thickness is the narrower side.' }),
    ...(coatingMostUm !== undefined &&
      coatingUm !== undefined &&
      coatingMostUm < coatingUm && { coatingMostUm: 'The most is less than the least.' }),
    ...(heatMaxC !== undefined && heatMaxS === undefined && { heatMaxS: 'Say for how long.' }),
    ...(heatMaxS !== undefined && heatMaxC === undefined && { heatMaxC: 'Say at what temperature.' }),
  }
}

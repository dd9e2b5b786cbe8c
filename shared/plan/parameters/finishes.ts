import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LEAD_BARRIERS, LEAD_BASES, LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { optionsOf } from '@/shared/columns/choice-options'
import {
  choiceColumn,
  flagColumn,
  numberColumn,
  optionalColumn,
  textColumn,
  type NumberColumn,
  type FlagColumn,
} from '@/shared/columns/column'
import { choiceParameter, numberParameter, tableParameter, type ValueOf } from '@/shared/plan/parameter'

export const boardFinish = choiceParameter({
  key: 'board-finish',
  label: 'Board finish',
  help: 'What covers the copper where solder shall go.',
  owner: 'design',
  options: optionsOf(BOARD_FINISHES),
})

export const boardFinishMin = numberParameter({
  key: 'board-finish-least',
  label: 'Board finish, least thickness',
  help: 'As ordered; for gold finishes the gold alone. Zero for bare copper and lacquer.',
  owner: 'design',
  unit: 'µm',
  min: 0,
  max: 100,
})

export const boardFinishMax = numberParameter({
  key: 'board-finish-most',
  label: 'Board finish, most thickness',
  help: 'As ordered; left open when the order sets no most.',
  owner: 'design',
  unit: 'µm',
  min: 0,
  max: 100,
})

export const boardNickel = numberParameter({
  key: 'board-nickel',
  label: 'Nickel or tin-nickel under the board finish',
  help: 'Least thickness as ordered; left open when there is none.',
  owner: 'design',
  unit: 'µm',
  min: 0,
  max: 50,
})

/** What a lead is made and coated with, as the table of finishes and a part of the works say it alike. */
export const coatingColumns = {
  base: choiceColumn({ label: 'Lead metal', options: optionsOf(LEAD_BASES) }),
  barrier: choiceColumn({ label: 'Underlayer', options: optionsOf(LEAD_BARRIERS) }),
  barrierUm: optionalColumn<NumberColumn>(
    numberColumn({ label: 'Underlayer, least', unit: 'µm', min: 0, max: 50 }),
  ),
  coating: choiceColumn({ label: 'Coating', options: optionsOf(LEAD_COATINGS) }),
  coatingUm: numberColumn({ label: 'Coating, least', unit: 'µm', min: 0, max: 100 }),
  coatingMostUm: optionalColumn<NumberColumn>(
    numberColumn({ label: 'Coating, most', unit: 'µm', min: 0, max: 100 }),
  ),
  annealed: optionalColumn<FlagColumn>(flagColumn({ label: 'Annealed after plating' })),
}

/** The finish of every component's leads: one row a component of the hole table. */
export const leadFinishes = tableParameter({
  key: 'lead-finishes',
  label: 'Lead finishes',
  help: 'One row for each component of the hole table, named alike.',
  owner: 'design',
  maxRows: 400,
  columns: {
    component: textColumn({ label: 'Component', maxLength: 60 }),
    ...coatingColumns,
    goldRemoved: optionalColumn<FlagColumn>(
      flagColumn({ label: 'Gold removed before soldering', help: 'By tinning twice or in flowing solder.' }),
    ),
  },
})
export type LeadFinish = ValueOf<typeof leadFinishes>[number]

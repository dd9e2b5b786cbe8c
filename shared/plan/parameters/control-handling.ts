import { optionsOf } from '@/shared/columns/choice-options'
import { choiceParameter, flagParameter } from '@/shared/plan/parameter'
import { BEND_RULES, type BendEdition } from '@/shared/physics/lead-bend'

const EDITIONS = Object.fromEntries(
  Object.entries(BEND_RULES).map(([key, { edition }]) => [key, { label: edition }]),
) as Record<BendEdition, { readonly label: string }>

export const leadBendEdition = choiceParameter({
  key: 'lead-bend-edition',
  label: 'Edition of the lead bend rule',
  help: 'Documents disagree on the radius and the straight length before a bend. Left open, the strictest of each.',
  owner: 'production',
  options: optionsOf(EDITIONS),
})

export const leadsFormedHere = flagParameter({
  key: 'leads-formed-here',
  label: 'Component leads are bent here',
  help: 'Whether leads are bent or spread in this shop before they are inserted. Left open, a lead forming check recorded says so.',
  owner: 'production',
})

export const moistureSensitiveParts = flagParameter({
  key: 'moisture-sensitive-parts',
  label: 'Moisture-sensitive parts are soldered',
  help: 'Whether any part has a moisture sensitivity level of 2 or more on its label (J-STD-020).',
  owner: 'production',
})

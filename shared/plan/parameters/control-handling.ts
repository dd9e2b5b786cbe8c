import { optionsOf } from '@/shared/columns/choice-options'
import { choiceParameter } from '@/shared/plan/parameter'
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

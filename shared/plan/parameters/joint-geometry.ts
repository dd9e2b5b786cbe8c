import { FILL_EDITIONS } from '@/shared/materials/hole-fill'
import { optionsOf } from '@/shared/columns/choice-options'
import { choiceParameter, numberParameter } from '@/shared/plan/parameter'

export const contactAngle = numberParameter({
  key: 'contact-angle',
  label: 'Contact angle to design for',
  help: 'Solder against lead and land, in degrees; 30° lies between good and fair wetting. Left open, pictures are drawn at 30°, and no rule takes it for stated.',
  owner: 'design',
  unit: '°',
  min: 0,
  max: 89,
})

export const leadProjection = numberParameter({
  key: 'lead-projection',
  label: 'Lead beyond the land',
  help: 'How far the lead stands out of the board on the solder side, at least.',
  owner: 'design',
  unit: 'mm',
  min: 0,
  max: 10,
})

export const leadProjectionAtMost = numberParameter({
  key: 'lead-projection-at-most',
  label: 'Lead beyond the land, at most',
  help: 'How far the longest lead, as cut, stands out of the board on the solder side.',
  owner: 'design',
  unit: 'mm',
  min: 0,
  max: 20,
})

export const fillEdition = choiceParameter({
  key: 'fill-edition',
  label: 'Hole fill judged by',
  help: 'Editions differ for class 2 and for components with many leads. Left open, the strictest applies.',
  owner: 'quality',
  options: optionsOf(FILL_EDITIONS),
})

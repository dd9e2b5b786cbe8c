import { limit } from '@/shared/plan/requirement'
import { commonPractice, published } from '@/shared/sources/provenance'

/** What only the production files of a board show. */

export const maskWebMin = limit({
  key: 'mask-web-least',
  label: 'Web of solder mask between two openings',
  unit: 'mm',
  direction: 'at least',
  byDefault: {
    value: 0.1,
    authority: 'common practice',
    from: commonPractice(
      'Makers of boards keep 0.1 mm of green mask between two openings, other colours 0.12 to 0.15 mm; narrower webs come off',
    ),
  },
})

const THERMAL_RELIEF =
  'IPC-2222, thermal relief in conductor planes, as a training slide of it quotes: webs together 60 % of the least land diameter; over all layers of a plated hole at most 4.0 mm of 1 oz copper'

export const reliefShareMax = limit({
  key: 'relief-share-most',
  label: 'Webs from a land to a plane, together, over the land’s diameter',
  unit: '%',
  direction: 'at most',
  byDefault: { value: 60, authority: 'standard', from: published(THERMAL_RELIEF) },
})

export const reliefCopperMax = limit({
  key: 'relief-copper-most',
  label: 'Webs of a hole on all layers, together, as if of 35 µm copper',
  unit: 'mm',
  direction: 'at most',
  byDefault: { value: 4, authority: 'standard', from: published(THERMAL_RELIEF) },
})

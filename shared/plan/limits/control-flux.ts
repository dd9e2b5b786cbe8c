import { limit } from '@/shared/plan/requirement'

/** What flux must hold before its density can tell anything of it. */
export const densityControlSolidsMin = limit({
  key: 'density-control-solids-least',
  label: 'Solids in a flux controlled by density',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 5,
    authority: 'common practice',
    from: {
      cite: 'Low-solids flux, under 5 % by mass, is controlled by acid number: density is too blunt',
      how: 'common practice, no published source',
    },
  },
})

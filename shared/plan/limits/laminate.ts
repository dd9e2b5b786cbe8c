import { commonPractice, computed, published } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const floatUsedMax = limit({
  key: 'float-used-most',
  label: 'Solder-float capability used up by soldering',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 100,
    authority: 'common practice',
    from: computed(
      'Exposure times added up as shares of the time the laminate floats at that temperature or above',
    ),
  },
})

export const limitedLaminateYearsMax = limit({
  key: 'limited-laminate-years-most',
  label: 'Service of plated holes in a laminate that carries them for a short life',
  unit: 'years',
  direction: 'at most',
  byDefault: {
    value: 5,
    authority: 'common practice',
    from: commonPractice('A service of more than 5 years counts as long'),
  },
})

export const glassTransitionMarginMin = limit({
  key: 'glass-transition-margin-least',
  label: 'Glass transition over the service temperature',
  unit: 'K',
  direction: 'at least',
  byDefault: {
    value: 20,
    authority: 'common practice',
    from: commonPractice(
      'A laminate is never worked or tested above its glass transition; 20 K keeps it clear',
    ),
  },
})

export const bowWithSurfaceMountMax = limit({
  key: 'bow-with-surface-mount-most',
  label: 'Bow and twist with surface-mount parts',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 0.75,
    authority: 'standard',
    from: published('IPC-6012B, 3.4.3, and IPC-A-610F, 10.2.7: 0.75 % with surface mount'),
  },
})

export const bowThroughHoleMax = limit({
  key: 'bow-through-hole-most',
  label: 'Bow and twist without surface-mount parts',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 1.5,
    authority: 'standard',
    from: published('IPC-6012B, 3.4.3, and IPC-A-610F, 10.2.7: 1.5 % otherwise'),
  },
})

import type { InspectionSeries } from '@/shared/sampling/inspection-series'

/** "4 decided, 1 rejected by its sample, 2 not decided" */
export function lotsInSeries({ steps }: InspectionSeries): string {
  const decided = steps.filter(({ outcome }) => outcome !== undefined)
  const rejected = decided.filter(({ outcome }) => outcome === 'rejected').length
  const open = steps.length - decided.length
  return [
    `${decided.length} decided`,
    rejected > 0 ? `${rejected} rejected by its sample` : '',
    open > 0 ? `${open} not decided` : '',
  ]
    .filter(Boolean)
    .join(', ')
}

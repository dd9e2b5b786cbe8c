import type { Stage } from '@/shared/plan/stage'

/** The parts of the pack besides its stages, in their order: the first two before the stages, the others behind. */
export const PACK_PARTS = {
  summary: { id: 'summary', title: 'Summary: signatures, exceptions, decisions' },
  routeCard: { id: 'route-card', title: 'Route card' },
  limits: { id: 'limits', title: 'Limits in force' },
  records: { id: 'records', title: 'Lots, logs and inspections' },
  asked: { id: 'asked', title: 'Actions, concessions and deviation permits' },
  studies: { id: 'studies', title: 'Option studies' },
  reviews: { id: 'reviews', title: 'Minutes of reviews' },
  nonconformities: { id: 'nonconformities', title: 'Nonconformities' },
  people: { id: 'people', title: 'People and trail' },
} as const

export const stagePart = (stage: Stage): string => `stage-${stage}`
export const itemPart = (key: string): string => `item-${key}`

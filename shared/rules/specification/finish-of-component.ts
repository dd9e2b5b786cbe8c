import type { LeadFinish } from '@/shared/plan/parameters/finishes'

const sameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase()

/** The row of a component's lead finish, matched by name whatever its capitals. */
export const finishOf = (component: string, finishes: readonly LeadFinish[]): LeadFinish | undefined =>
  finishes.find((finish) => sameName(finish.component, component))

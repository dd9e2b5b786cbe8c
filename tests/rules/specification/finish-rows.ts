import type { LeadFinish } from '@/shared/plan/parameters/finishes'

/** A sound row of the lead finishes: 5 to 10 µm of Sn60Pb40 on copper. */
export const leadFinish = (over: Partial<LeadFinish> = {}): LeadFinish => ({
  component: 'R1',
  base: 'copper',
  barrier: 'none',
  barrierUm: undefined,
  coating: 'tin-lead',
  coatingUm: 5,
  coatingMostUm: 10,
  annealed: undefined,
  goldRemoved: undefined,
  ...over,
})

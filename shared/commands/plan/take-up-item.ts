import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'

export const takeUpItem = defineFace({
  label: 'Take an item of the standard plan up',
  done: 'Took an item of the standard plan up',
  may: { scope: 'programme', lead: true, departments: ['quality'] },
  record: z.object({ item: z.string(), stage: z.enum(STAGES), title: z.string(), reason: z.string() }),
  reads: ({ stage, title, reason }) => ({ subject: title, what: STAGE_NAMES[stage], words: reason }),
  leads: ({ item }) => ({ kind: 'item', item }),
})

import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'

export const addItem = defineFace({
  label: 'Add an item to the plan',
  done: 'Added an item to the plan',
  may: { scope: 'programme', lead: true, departments: ['quality'] },
  record: z.object({ item: z.string(), stage: z.enum(STAGES), title: z.string(), asks: z.string() }),
  reads: ({ stage, title, asks }) => ({ subject: title, what: STAGE_NAMES[stage], words: asks }),
  leads: ({ item }) => ({ kind: 'item', item }),
})

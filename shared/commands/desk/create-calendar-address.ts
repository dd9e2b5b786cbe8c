import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const createCalendarAddress = defineFace({
  label: 'Make a secret address for one’s calendar',
  done: 'Made a secret address for a calendar',
  may: { scope: 'installation', anyone: true },
  record: z.object({ person: z.string() }),
  reads: ({ person }) => ({ subject: person }),
  leads: () => ({ kind: 'desk settings' }),
})

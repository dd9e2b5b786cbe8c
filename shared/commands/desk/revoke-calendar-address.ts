import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const revokeCalendarAddress = defineFace({
  label: 'Stop the secret address of one’s calendar',
  done: 'Stopped the secret address of a calendar',
  may: { scope: 'installation', anyone: true },
  record: z.object({ person: z.string() }),
  reads: ({ person }) => ({ subject: person }),
  leads: () => ({ kind: 'desk settings' }),
})

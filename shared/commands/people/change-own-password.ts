import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'

export const changeOwnPassword = defineFace({
  label: 'Change one’s own password',
  done: 'Changed one’s own password',
  may: { scope: 'self' },
  record: z.object({ person: z.string() }),
  reads: ({ person }) => ({ subject: person }),
  leads: () => ({ kind: 'desk' }),
})

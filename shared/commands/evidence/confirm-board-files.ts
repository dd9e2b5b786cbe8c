import { z } from 'zod'
import { roleFrom, roleLabel } from '@/shared/board/role-code'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'

export const confirmBoardFiles = defineFace({
  label: 'Confirm what each file of a board is',
  done: 'Confirmed what each file of a board is',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    evidence: z.string(),
    fileName: z.string(),
    files: z.array(z.object({ name: z.string(), role: z.string() })),
  }),
  reads: ({ fileName, files }) => ({
    subject: fileName,
    what: files
      .flatMap(({ name, role }) => {
        const known = roleFrom(role)
        return known && known.kind !== 'other' ? [`${name}: ${roleLabel(known)}`] : []
      })
      .join('; '),
  }),
  leads: ({ evidence }) => ({ kind: 'board', evidence }),
})

import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { changeInWords } from '@/shared/commands/changes/change-in-words'
import { proposedChange } from '@/shared/commands/changes/proposed-change'
import { defineFace } from '@/shared/commands/face'
import { dropRefusal, type ChangeNotice } from '@/shared/gate/change-notice'
import type { NoticeChange } from '@/shared/gate/proposed-change'
import { DEPARTMENTS } from '@/shared/plan/department'

interface Dropping {
  readonly notice: ChangeNotice
  readonly change: Pick<NoticeChange, 'authorId'>
}

export const dropChange = defineFace({
  label: 'Take a change out of a change notice',
  done: 'Took a change out of a change notice',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  refuses: (actor: Actor, { notice, change }: Dropping) => dropRefusal(notice, change, actor),
  record: z.object({ notice: z.number(), change: proposedChange }),
  reads: ({ notice, change }) => ({ subject: `change notice ${notice}`, what: changeInWords(change) }),
  leads: ({ notice }) => ({ kind: 'notice', number: notice }),
})

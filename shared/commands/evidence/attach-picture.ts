import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENTS } from '@/shared/plan/department'
import { picturedInWords, picturedRecord, placeOfPictured } from '@/shared/reviews/pictured'

export const attachPicture = defineFace({
  label: 'Attach a picture of a joint or a nonconformity',
  done: 'Attached a picture of a joint or a nonconformity',
  may: { scope: 'programme', departments: DEPARTMENTS },
  record: z.object({ about: picturedRecord, note: z.string(), fileName: z.string() }),
  reads: ({ about, note, fileName }) => ({ subject: picturedInWords(about), what: fileName, words: note }),
  leads: ({ about }) => placeOfPictured(about),
})

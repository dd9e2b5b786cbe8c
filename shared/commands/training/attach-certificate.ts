import { z } from 'zod'
import { certificateInWords, certificateRecord } from '@/shared/commands/training/certificate-record'
import { defineFace } from '@/shared/commands/face'

export const attachCertificate = defineFace({
  label: 'Attach a certificate to a training',
  done: 'Attached a certificate to a training',
  may: { scope: 'works', of: 'people', departments: ['production', 'quality'] },
  record: z.object({ ...certificateRecord, note: z.string() }),
  reads: ({ note, ...attached }) => ({ ...certificateInWords(attached), words: note }),
  leads: () => ({ kind: 'of the works', subject: { kind: 'people', code: 'people' } }),
})

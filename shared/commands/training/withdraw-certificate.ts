import { z } from 'zod'
import { certificateInWords, certificateRecord } from '@/shared/commands/training/certificate-record'
import { defineFace } from '@/shared/commands/face'

export const withdrawCertificate = defineFace({
  label: 'Withdraw a certificate',
  done: 'Withdrew a certificate',
  may: { scope: 'works', of: 'people', departments: ['production', 'quality'] },
  record: z.object({ ...certificateRecord, reason: z.string() }),
  reads: ({ reason, ...attached }) => ({ ...certificateInWords(attached), words: reason }),
  leads: () => ({ kind: 'of the works', subject: { kind: 'people', code: 'people' } }),
})

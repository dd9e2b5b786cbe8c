import { z } from 'zod'
import { valuesInWords } from '@/shared/records/values-in-words'
import { training } from '@/shared/records/kinds/training'

/** The certificate of a training, as the entries about it tell of it. */
export const certificateRecord = {
  /** The training that it proves, with its values at the time. */
  of: z.record(z.string(), z.unknown()),
  fileName: z.string(),
} as const

export const certificateInWords = ({
  of,
  fileName,
}: {
  of: Readonly<Record<string, unknown>>
  fileName: string
}) => ({ subject: String(of['worker'] ?? ''), what: `${fileName}; ${valuesInWords(training.columns, of)}` })

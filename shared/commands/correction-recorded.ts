import { z } from 'zod'

const values = z.record(z.string(), z.unknown())

/** What the entry of every correction says beside its subject: all values that stood, and all that stand from here on. */
export const correctionRecorded = z.object({ before: values, after: values, reason: z.string() })

import { z } from 'zod'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'

/** Gates of earlier stages that were not open when it was recorded. Older entries, and those of other work, do not say. */
export const recordedGatesShut = z.array(z.enum(STAGES)).optional()

/** "while the specification and evaluation gates were not open"; undefined where all were, or no entry says. */
export function gatesShutInWords(stages: z.infer<typeof recordedGatesShut>): string | undefined {
  if (!stages || stages.length === 0) return undefined
  const names = stages.map((stage) => STAGE_NAMES[stage].toLowerCase())
  const listed = names.length < 2 ? names[0] : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
  return `while the ${listed} ${names.length === 1 ? 'gate was' : 'gates were'} not open`
}

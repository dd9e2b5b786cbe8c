import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { parameterName, valueInBrief } from '@/shared/commands/named'
import { recordedValue } from '@/shared/commands/recorded-value'
import { reviseParameter } from '@/shared/commands/specification/revise-parameter'
import { DEPARTMENTS } from '@/shared/plan/department'

export const keepOwnValue = defineFace({
  label: 'Keep the programme’s own against a preferred value',
  done: 'Kept the programme’s own against a preferred value',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  refuses: reviseParameter.refuses,
  record: z.object({
    parameter: z.string(),
    preferred: recordedValue,
    own: recordedValue,
    reason: z.string(),
  }),
  reads: ({ parameter, preferred, own, reason }) => ({
    subject: parameterName(parameter),
    what: `${valueInBrief(parameter, own)}, where the works prefer ${valueInBrief(parameter, preferred)}`,
    words: reason,
  }),
  leads: ({ parameter }) => ({ kind: 'parameter', parameter }),
})

import { z } from 'zod'
import { ruleDecided, ruleDecidedInWords } from '@/shared/commands/company-rules/rule-decision'
import { defineFace } from '@/shared/commands/face'
import { STATES_LIMITS } from '@/shared/plan/requirement'

export const takeCompanyRule = defineFace({
  label: 'Take over what the company rules say',
  done: 'Took over what the company rules say',
  may: { scope: 'programme', departments: STATES_LIMITS },
  record: z.object(ruleDecided),
  reads: ruleDecidedInWords,
  leads: ({ limit }) => ({ kind: 'limit', limit }),
})

import { z } from 'zod'
import { ruleDecided, ruleDecidedInWords } from '@/shared/commands/company-rules/rule-decision'
import { defineFace } from '@/shared/commands/face'
import { STATES_LIMITS } from '@/shared/plan/requirement'

export const keepOwnRule = defineFace({
  label: 'Keep the programme’s own against a company rule',
  done: 'Kept the programme’s own against a company rule',
  may: { scope: 'programme', departments: STATES_LIMITS },
  record: z.object({ ...ruleDecided, reason: z.string() }),
  reads: ({ reason, ...decided }) => ({ ...ruleDecidedInWords(decided), words: reason }),
  leads: ({ limit }) => ({ kind: 'limit', limit }),
})

import { NELSON_1984 } from '@/shared/statistics/run-rules/nelson'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'

/** Run rules by the answer to "which signals must be answered": what is drawn, and what is asked. */
export const RUN_RULE_SETS = {
  limits: {
    name: 'zone rules of the Western Electric handbook (1956)',
    drawn: WESTERN_ELECTRIC_1956,
    asked: [WESTERN_ELECTRIC_1956[0]],
  },
  zones: {
    name: 'zone rules of the Western Electric handbook (1956)',
    drawn: WESTERN_ELECTRIC_1956,
    asked: WESTERN_ELECTRIC_1956,
  },
  nelson: {
    name: 'tests of Nelson (1984)',
    drawn: NELSON_1984,
    asked: NELSON_1984,
  },
} as const satisfies Record<string, { name: string; drawn: readonly RunRule[]; asked: readonly RunRule[] }>
export type RunRuleSet = keyof typeof RUN_RULE_SETS

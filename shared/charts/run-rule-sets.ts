import { NELSON_1984 } from '@/shared/statistics/run-rules/nelson'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'

/**
 * Run rules by the answer to "which signals must be answered": what is drawn,
 * what is asked, and how many signals the asked rules give on a thousand
 * readings while nothing has changed (normal, independent readings, limits
 * known). Sources: 2.7 is twice the normal tail beyond three sigma; the others
 * by simulation, the four zone rules in step with their mean run of 91.75 in
 * C. W. Champ and W. H. Woodall, Technometrics 29 (1987) 393.
 */
export const RUN_RULE_SETS = {
  limits: {
    name: 'zone rules of the Western Electric handbook (1956)',
    drawn: WESTERN_ELECTRIC_1956,
    asked: [WESTERN_ELECTRIC_1956[0]],
    falsePerThousand: 2.7,
  },
  zones: {
    name: 'zone rules of the Western Electric handbook (1956)',
    drawn: WESTERN_ELECTRIC_1956,
    asked: WESTERN_ELECTRIC_1956,
    falsePerThousand: 11.9,
  },
  nelson: {
    name: 'tests of Nelson (1984)',
    drawn: NELSON_1984,
    asked: NELSON_1984,
    falsePerThousand: 15.1,
  },
} as const satisfies Record<
  string,
  { name: string; drawn: readonly RunRule[]; asked: readonly RunRule[]; falsePerThousand: number }
>
export type RunRuleSet = keyof typeof RUN_RULE_SETS

/** Asked where the programme chooses none: the set with the fewest false signals. */
export const USUAL_RUN_RULES: RunRuleSet = 'limits'

/** Signals to expect of a set on so many readings while nothing has changed; limits estimated from few readings give more. */
export const falseSignalsExpected = (set: RunRuleSet, readings: number): number =>
  (RUN_RULE_SETS[set].falsePerThousand * readings) / 1000

import { NoDate } from '@/shared/quantity/calendar'
import type { Facts } from './facts'
import type { Finding, Judged } from './finding'
import { judge, type AnyRule } from './rule'

/** The finding of one rule, and what the rule threw when it could not be computed. */
export interface Outcome {
  readonly finding: Finding
  readonly failure?: { readonly thrown: unknown }
}

/**
 * Judges one rule; one that throws becomes an undetermined finding that says so, so that the rest of the
 * programme can be judged. What it threw comes along, for the server to log.
 */
export function judgeSafely(rule: AnyRule, facts: Facts): Outcome {
  try {
    return { finding: judge(rule, facts) }
  } catch (thrown) {
    const finding = { rule: rule.id, version: rule.version, ...notComputed(thrown) }
    return { finding, failure: { thrown } }
  }
}

function notComputed(thrown: unknown): Judged {
  const [why, message] =
    thrown instanceof NoDate
      ? [thrown.message, 'Withdraw the record that holds it, or revise the value, and enter it again.']
      : [
          'the program failed on what is specified and recorded.',
          'Tell whoever looks after this installation: the server’s log names the rule and what went wrong.',
        ]
  return {
    verdict: 'undetermined',
    found: `This rule could not be computed: ${why}`,
    limit: 'Cannot be judged yet.',
    missing: ['a result of this rule'],
    working: [],
    sources: [],
    remedy: { message },
  }
}

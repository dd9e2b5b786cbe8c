import { log } from '@/lib/log/log'
import { judgeProgramme, type Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'

/**
 * Judges a programme, with an earlier judgement only what a change reaches. A rule that could not be computed
 * is logged with its name, once for as long as what it reads stays the same.
 */
export function judgeAndLog(state: ProgrammeState, before?: Judgement): Judgement {
  const judgement = judgeProgramme(state, before)
  for (const [rule, failure] of judgement.judging.failures) {
    if (before?.judging.failures.get(rule) === failure) continue
    log.error('A rule could not be computed; its finding is undetermined.', {
      programme: state.programme.code,
      rule,
      error: failure.thrown,
    })
  }
  return judgement
}

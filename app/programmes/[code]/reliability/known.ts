import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { RecordOf } from '@/shared/records/record-kinds'
import { lifeTestsShown, type LifeTestShown } from '@/shared/reliability/life-tests-shown'
import { programmeTarget, type ProgrammeTarget } from '@/shared/reliability/programme-target'
import { rollUp, type RateKnown } from '@/shared/reliability/roll-up'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** All that the reliability page shows, once there is a target. */
export interface Known {
  readonly target: ProgrammeTarget
  readonly specimens: readonly RecordOf<'life-test'>[]
  readonly tests: readonly LifeTestShown[]
  readonly returns: readonly RecordOf<'field-return'>[]
  readonly exposures: readonly RecordOf<'field-exposure'>[]
  readonly rates: readonly RateKnown[]
}

export function knownOf({
  state,
  judgement,
}: ProgrammeView):
  | { readonly known: Known; readonly missing?: undefined }
  | { readonly known?: undefined; readonly missing: readonly string[] } {
  const { target, missing } = programmeTarget(state.facts)
  if (!target) return { missing }
  const { records } = state.facts
  const specimens = recordsOfKind(records, 'life-test')
  const returns = recordsOfKind(records, 'field-return')
  const exposures = recordsOfKind(records, 'field-exposure')
  const predicted = judgement.findings.get('joint-budget')?.margin?.found
  return {
    known: {
      target,
      specimens,
      returns,
      exposures,
      tests: lifeTestsShown(specimens, target),
      rates: rollUp(target, { predicted, specimens, returns, exposures }),
    },
  }
}

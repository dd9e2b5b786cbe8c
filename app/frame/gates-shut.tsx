import { gateAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { gatesShutBefore } from '@/shared/gate/shut-gates'
import { STAGE_NAMES, type Stage } from '@/shared/plan/stage'

interface GatesShutProps {
  view: ProgrammeView
  /** The stage of the work that is about to be recorded. */
  stage: Stage
  /** "Assemblies are inspected" */
  what: string
}

/** Before a form: gates that should be open by then and are not. It warns and forbids nothing. */
export function GatesShut({ view, stage, what }: GatesShutProps) {
  const shut = gatesShutBefore(stage, view.judgement.gates)
  if (shut.length === 0) return null
  return (
    <Notice kind="warning" title={`${what} while an earlier gate is not open`}>
      Not open:{' '}
      {shut.map((gate, at) => (
        <span key={gate}>
          {at > 0 && ', '}
          <a href={gateAddress(view.code, gate)}>{STAGE_NAMES[gate].toLowerCase()}</a>
        </span>
      ))}
      . It can be recorded all the same; the trail will say which gates were not open.
    </Notice>
  )
}

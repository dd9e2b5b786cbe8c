import { StampRow } from '@/app/frame/stamp-row'
import { GateMark } from '@/app/ui/gate-mark'
import { Section } from '@/app/ui/section'
import type { GateState } from '@/shared/gate/gate'
import { STAGE_NAMES } from '@/shared/plan/stage'

/** A gate with its stamps, and what is in its way. */
export function GatePrinted({ gate }: { gate: GateState }) {
  return (
    <Section level={3} heading={`${STAGE_NAMES[gate.stage]} gate`} aside={<GateMark status={gate.status} />}>
      <StampRow
        meaning="Gate signed"
        wanted="not signed yet"
        lapse={{ state: 'lapsed', because: 'The stage has changed since.' }}
        signed={gate.signatures}
      />
      {gate.blockers.length > 0 && (
        <ul className="finding-notes">
          {gate.blockers.map(({ title, message }) => (
            <li key={`${title} ${message}`}>
              {title}: {message}
            </li>
          ))}
        </ul>
      )}
    </Section>
  )
}

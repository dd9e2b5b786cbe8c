import { ResetNote } from '@/app/frame/reset-note'
import { GateMark } from '@/app/ui/gate-mark'
import { Section } from '@/app/ui/section'
import { Stamp, StampPlace } from '@/app/ui/stamp'
import type { GateState } from '@/shared/gate/gate'
import { STAGE_NAMES } from '@/shared/plan/stage'

/** A gate with its stamps, and what is in its way. */
export function GatePrinted({ gate }: { gate: GateState }) {
  return (
    <Section
      level={3}
      heading={`${STAGE_NAMES[gate.stage]} gate`}
      aside={<GateMark standing={gate.standing} />}
    >
      <div className="stamp-row">
        {gate.signatures.map(({ department, signature, holds }) =>
          signature ? (
            <Stamp
              key={department}
              department={department}
              meaning="Gate signed"
              name={signature.personName}
              at={signature.at}
              digest={signature.digest}
              note={<ResetNote personId={signature.personId} at={signature.at} />}
              state={holds ? 'stands' : 'lapsed'}
              because={holds ? undefined : 'The stage has changed since.'}
            />
          ) : (
            <StampPlace key={department} department={department} wanted="not signed yet" />
          ),
        )}
      </div>
      {gate.blockers.length > 0 && (
        <ul className="finding-notes">
          {gate.blockers.map(({ title, says }) => (
            <li key={`${title} ${says}`}>
              {title}: {says}
            </li>
          ))}
        </ul>
      )}
    </Section>
  )
}

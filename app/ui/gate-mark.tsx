import type { GateStanding } from '@/shared/gate/gate'
import { GATE_INK, GateDrawing } from './gate-drawing'

/** How a gate stands, as posts and leaf, with its words. */
export function GateMark({ standing }: { standing: GateStanding }) {
  return (
    <span className="mark">
      <svg width="18" height="18" viewBox="-12 -12 24 24" aria-hidden="true" className={GATE_INK[standing]}>
        <GateDrawing standing={standing} />
      </svg>
      <span className={`mark-word ${GATE_INK[standing]}`}>{standing}</span>
    </span>
  )
}

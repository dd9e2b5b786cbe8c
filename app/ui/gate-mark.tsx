import type { GateStatus } from '@/shared/gate/gate'
import { GATE_INK, gateName } from './gate-drawing'
import { onceFor } from './once-for'
import { placed } from './placed-by-name'

/** How a gate stands, as posts and leaf, with its words. */
export const GateMark = ({ status }: { status: GateStatus }) => gateMark(status)

/** The mark itself, for places with many. */
export const gateMark = onceFor((status: GateStatus) => (
  <span
    className="mark"
    dangerouslySetInnerHTML={{
      __html:
        `<svg width="18" height="18" viewBox="-12 -12 24 24" aria-hidden="true" class="${GATE_INK[status]}">` +
        `${placed(gateName(status))}</svg><span class="mark-word ${GATE_INK[status]}">${status}</span>`,
    }}
  />
))

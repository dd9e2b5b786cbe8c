import type { GateStanding } from '@/shared/gate/gate'
import { GATE_INK, gateName } from './gate-drawing'
import { onceFor } from './once-for'
import { placed } from './placed-by-name'

/** How a gate stands, as posts and leaf, with its words. */
export const GateMark = ({ standing }: { standing: GateStanding }) => gateMark(standing)

/** The mark itself, for places with many. */
export const gateMark = onceFor((standing: GateStanding) => (
  <span
    className="mark"
    dangerouslySetInnerHTML={{
      __html:
        `<svg width="18" height="18" viewBox="-12 -12 24 24" aria-hidden="true" class="${GATE_INK[standing]}">` +
        `${placed(gateName(standing))}</svg><span class="mark-word ${GATE_INK[standing]}">${standing}</span>`,
    }}
  />
))

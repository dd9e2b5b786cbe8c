import type { GateStatus } from '@/shared/gate/gate'
import { toPlace } from './placed-by-name'

export const GATE_INK: Record<GateStatus, string> = {
  blocked: 'ink-tin',
  ready: 'ink-copper',
  'part signed': 'ink-copper',
  open: 'ink-mask',
  lapsed: 'ink-carmine',
}

/**
 * A gate across the route, centred on the origin in a box of 24: two posts with
 * a barred leaf, a plain leaf, half a leaf, no leaf and a tick, or a broken
 * leaf. `turned` for a route that runs down. Text to be placed inside an `svg`.
 */
export function gateMarkup(status: GateStatus, turned = false): string {
  const quarter = ' transform="rotate(90)"'
  const line = (d: string, turn: boolean, width: number): string =>
    `<path d="${d}"${turn ? quarter : ''} fill="none" stroke="currentColor" stroke-width="${width}"/>`
  return line('M-9 -11V11M9 -11V11', turned, 3) + line(LEAVES[status], turned && status !== 'open', 2)
}

const LEAVES: Record<GateStatus, string> = {
  blocked: 'M-9 -6H9M-9 6H9M-9 6L9 -6M-9 -6L9 6',
  ready: 'M-9 -6H9M-9 6H9',
  'part signed': 'M-9 -6H0V6H-9M0 0H2',
  open: 'M-5 0.3L-1.2 4L5.4 -4',
  lapsed: 'M-9 -6H-1L-4 1L1 6H-9M9 -6H4L2 -1M9 6H6',
}

/** The name that a gate across the route is placed by; see `MarksToPlace`. */
export const gateName = (status: GateStatus): string => `gate-${status.replaceAll(' ', '-')}`

export const gatesToPlace = (): string =>
  (Object.keys(LEAVES) as GateStatus[])
    .map((status) => toPlace(gateName(status), gateMarkup(status)))
    .join('')

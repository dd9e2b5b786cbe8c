import type { GateStanding } from '@/shared/gate/gate'

export const GATE_INK: Record<GateStanding, string> = {
  blocked: 'ink-tin',
  ready: 'ink-copper',
  'part signed': 'ink-copper',
  open: 'ink-mask',
  'no longer standing': 'ink-carmine',
}

/**
 * A gate across the route, centred on the origin in a box of 24: two posts with
 * a barred leaf, a plain leaf, half a leaf, no leaf and a tick, or a broken
 * leaf. `turned` for
 * a route that runs down. To be placed inside an `svg`.
 */
export function GateDrawing({ standing, turned }: { standing: GateStanding; turned?: boolean }) {
  const quarter = turned ? 'rotate(90)' : undefined
  return (
    <>
      <path d="M-9 -11V11M9 -11V11" transform={quarter} fill="none" stroke="currentColor" strokeWidth="3" />
      <path
        d={LEAVES[standing]}
        transform={standing === 'open' ? undefined : quarter}
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
      />
    </>
  )
}

const LEAVES: Record<GateStanding, string> = {
  blocked: 'M-9 -6H9M-9 6H9M-9 6L9 -6M-9 -6L9 6',
  ready: 'M-9 -6H9M-9 6H9',
  'part signed': 'M-9 -6H0V6H-9M0 0H2',
  open: 'M-5 0.3L-1.2 4L5.4 -4',
  'no longer standing': 'M-9 -6H-1L-4 1L1 6H-9M9 -6H4L2 -1M9 6H6',
}

import type { Standing } from '@/shared/gate/standing'

/** In the order a summary counts them: settled first, then what wants a hand, then what waits. */
export const STANDING_ORDER = [
  'approved',
  'ready',
  'short',
  'lapsed',
  'open',
  'set aside',
] as const satisfies readonly Standing[]

export const STANDING_INK: Record<Standing, string> = {
  open: 'ink-tin',
  short: 'ink-copper',
  ready: 'ink-copper',
  approved: 'ink-mask',
  lapsed: 'ink-carmine',
  'set aside': 'ink-tin',
}

/**
 * The land of an item, seen from above, centred on the origin in a box of 20:
 * bare ring, ring with a piece missing, full ring, filled and ticked, cracked
 * through, or barred. To be placed inside an `svg`.
 */
export function StandingDrawing({ standing }: { standing: Standing }) {
  switch (standing) {
    case 'open':
      return <circle r="7.5" fill="none" stroke="currentColor" strokeWidth="1.8" />
    case 'short':
      return <path d="M0 -6.5A6.5 6.5 0 1 0 6.5 0" fill="none" stroke="currentColor" strokeWidth="4" />
    case 'ready':
      return <circle r="6.5" fill="none" stroke="currentColor" strokeWidth="4.4" />
    case 'approved':
      return (
        <>
          <circle r="8.7" fill="currentColor" />
          <path d="M-4.2 0.3L-1.2 3.3L4.4 -3" fill="none" stroke="var(--color-sheet)" strokeWidth="2.2" />
        </>
      )
    case 'lapsed':
      return (
        <>
          <circle r="8.7" fill="currentColor" />
          <path
            d="M3 -10L-1.8 -2.2L2.2 1L-2.6 10"
            fill="none"
            stroke="var(--color-sheet)"
            strokeWidth="2.4"
          />
        </>
      )
    case 'set aside':
      return (
        <>
          <circle r="7.5" fill="none" stroke="currentColor" strokeWidth="1.6" strokeDasharray="2.6 2.1" />
          <path d="M-9.5 0H9.5" stroke="currentColor" strokeWidth="2.2" />
        </>
      )
  }
}

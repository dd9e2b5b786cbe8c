import type { Standing } from '@/shared/gate/standing'
import { toPlace } from './placed-by-name'

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
 * through, or barred. Text to be placed inside an `svg`.
 */
const STANDING_SHAPE: Readonly<Record<Standing, string>> = {
  open: '<circle r="7.5" fill="none" stroke="currentColor" stroke-width="1.8"/>',
  short: '<path d="M0 -6.5A6.5 6.5 0 1 0 6.5 0" fill="none" stroke="currentColor" stroke-width="4"/>',
  ready: '<circle r="6.5" fill="none" stroke="currentColor" stroke-width="4.4"/>',
  approved: filled('M-4.2 0.3L-1.2 3.3L4.4 -3', 2.2),
  lapsed: filled('M3 -10L-1.8 -2.2L2.2 1L-2.6 10', 2.4),
  'set aside':
    '<circle r="7.5" fill="none" stroke="currentColor" stroke-width="1.6" stroke-dasharray="2.6 2.1"/>' +
    '<path d="M-9.5 0H9.5" stroke="currentColor" stroke-width="2.2"/>',
}

function filled(line: string, width: number): string {
  return (
    '<circle r="8.7" fill="currentColor"/>' +
    `<path d="${line}" fill="none" stroke="var(--color-sheet)" stroke-width="${width}"/>`
  )
}

/** The name that an item's land is placed by; see `MarksToPlace`. */
export const landName = (standing: Standing): string => `land-${standing.replace(' ', '-')}`

export const landsToPlace = (): string =>
  STANDING_ORDER.map((standing) => toPlace(landName(standing), STANDING_SHAPE[standing])).join('')

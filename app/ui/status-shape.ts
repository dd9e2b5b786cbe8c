import type { Status } from '@/shared/gate/item-status'
import { toPlace } from './placed-by-name'

interface Look {
  readonly ink: string
  /**
   * The land of the item, seen from above, centred on the origin in a box of 20:
   * filled and ticked, full ring, ring with a piece missing, cracked through,
   * bare ring, or barred. Text to be placed inside an `svg`.
   */
  readonly land: string
}

/** In the order a summary counts them: settled first, then what wants a hand, then what waits. */
const LOOKS: Readonly<Record<Status, Look>> = {
  approved: { ink: 'ink-mask', land: filled('M-4.2 0.3L-1.2 3.3L4.4 -3', 2.2) },
  ready: {
    ink: 'ink-copper',
    land: '<circle r="6.5" fill="none" stroke="currentColor" stroke-width="4.4"/>',
  },
  incomplete: {
    ink: 'ink-copper',
    land: '<path d="M0 -6.5A6.5 6.5 0 1 0 6.5 0" fill="none" stroke="currentColor" stroke-width="4"/>',
  },
  lapsed: { ink: 'ink-carmine', land: filled('M3 -10L-1.8 -2.2L2.2 1L-2.6 10', 2.4) },
  open: { ink: 'ink-tin', land: '<circle r="7.5" fill="none" stroke="currentColor" stroke-width="1.8"/>' },
  'not applicable': {
    ink: 'ink-tin',
    land:
      '<circle r="7.5" fill="none" stroke="currentColor" stroke-width="1.6" stroke-dasharray="2.6 2.1"/>' +
      '<path d="M-9.5 0H9.5" stroke="currentColor" stroke-width="2.2"/>',
  },
}
export const STANDING_ORDER = Object.keys(LOOKS) as readonly Status[]

export const statusInk = (status: Status): string => LOOKS[status].ink

function filled(line: string, width: number): string {
  return (
    '<circle r="8.7" fill="currentColor"/>' +
    `<path d="${line}" fill="none" stroke="var(--color-sheet)" stroke-width="${width}"/>`
  )
}

/** The name that an item's land is placed by; see `MarksToPlace`. */
export const landName = (status: Status): string => `land-${status.replace(' ', '-')}`

export const landsToPlace = (): string =>
  STANDING_ORDER.map((status) => toPlace(landName(status), LOOKS[status].land)).join('')

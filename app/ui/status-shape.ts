import type { Status } from '@/shared/gate/item-status'
import { toPlace } from './placed-by-name'

interface Look {
  readonly ink: string
  /**
   * The item's box on the card, centred on the origin in a box of 20: stamped, punched at its corner,
   * filled to the line it has come to, torn through, empty, or barred. Text to be placed inside an `svg`.
   */
  readonly land: string
}

const BOX = 'M-8 -8H8V8H-8Z'
const outlined = (width: number) =>
  `<path d="${BOX}" fill="none" stroke="currentColor" stroke-width="${width}"/>`

/** In the order a summary counts them: settled first, then what wants a hand, then what waits. */
const LOOKS: Readonly<Record<Status, Look>> = {
  approved: {
    ink: 'ink-mask',
    land:
      '<path transform="rotate(-7)" d="M-9 -9H9V9H-9Z" fill="currentColor"/>' +
      '<path transform="rotate(-7)" d="M-6 -6H6V6H-6ZM-3.4 -2H3.4M-3.4 2H3.4" fill="none" stroke="var(--color-sheet)" stroke-width="1.7"/>',
  },
  ready: {
    ink: 'ink-copper',
    land:
      '<path d="M-9 -9H2.5L9 -2.5V9H-9Z" fill="currentColor"/>' +
      '<circle cx="-3.5" cy="-3.5" r="2.6" fill="var(--color-sheet)"/>',
  },
  incomplete: {
    ink: 'ink-rosin',
    land: outlined(2) + '<path d="M-8 8V1H8V8Z" fill="currentColor"/>',
  },
  lapsed: {
    ink: 'ink-carmine',
    land:
      '<path d="M-9 -9H9V9H-9Z" fill="currentColor"/>' +
      '<path d="M3 -10L-1.8 -2.2L2.2 1L-2.6 10" fill="none" stroke="var(--color-sheet)" stroke-width="2.6"/>',
  },
  open: { ink: 'ink-tin', land: outlined(1.6) },
  'not applicable': {
    ink: 'ink-tin',
    land:
      `<path d="${BOX}" fill="none" stroke="currentColor" stroke-width="1.6" stroke-dasharray="2.6 2.1"/>` +
      '<path d="M-9.5 0H9.5" stroke="currentColor" stroke-width="2.2"/>',
  },
}
export const STANDING_ORDER = Object.keys(LOOKS) as readonly Status[]

export const statusInk = (status: Status): string => LOOKS[status].ink

/** The name that an item's land is placed by; see `MarksToPlace`. */
export const landName = (status: Status): string => `land-${status.replace(' ', '-')}`

export const landsToPlace = (): string =>
  STANDING_ORDER.map((status) => toPlace(landName(status), LOOKS[status].land)).join('')

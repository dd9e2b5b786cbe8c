/** A key that does something, and what. */
export interface KeyTold {
  readonly keys: readonly string[]
  readonly does: string
  /** Where it does, when not everywhere. */
  readonly where?: string
}

/** Pressed alone: they can be turned off. */
export const SINGLE_KEYS: readonly KeyTold[] = [
  { keys: ['/'], does: 'Find anything' },
  { keys: ['?'], does: 'Show this list of keys' },
  { keys: ['J'], does: 'Go to the next item', where: 'on an item' },
  { keys: ['K'], does: 'Go to the item before', where: 'on an item' },
  { keys: ['S'], does: 'Go to the signing box', where: 'on an item' },
]

/** These work whatever is turned off. */
export const OTHER_KEYS: readonly KeyTold[] = [
  { keys: ['Ctrl', 'K'], does: 'Find anything, from a field as well (on a Mac: ⌘ K)' },
  { keys: ['↓', '↑'], does: 'Go along the matches', where: 'while finding' },
  { keys: ['Enter'], does: 'Open the match', where: 'while finding' },
  { keys: ['Esc'], does: 'Close the box', where: 'while finding' },
  { keys: ['→', '←', 'Home', 'End'], does: 'Go along the margins', where: 'on the map of margins' },
]

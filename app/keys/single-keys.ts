const KEPT_AS = 'liquidus-single-keys'

/**
 * Whether keys pressed alone do something in this browser: on until somebody turns them off (WCAG 2.2, 2.1.4). Where
 * the browser keeps nothing, they are on.
 */
export function singleKeysAreOn(): boolean {
  try {
    return localStorage.getItem(KEPT_AS) !== 'off'
  } catch {
    return true
  }
}

export function turnSingleKeys(on: boolean): void {
  try {
    localStorage.setItem(KEPT_AS, on ? 'on' : 'off')
  } catch {
    // Nothing is kept in this browser: they stay as they are.
  }
}

const TAKES_KEYS =
  'input, textarea, select, [contenteditable], dialog[open], [role="slider"], [role="listbox"]'

/** Whether a key was pressed alone as a shortcut, and not into a field or a dialog. */
export const isSingleKey = (event: KeyboardEvent): boolean =>
  !event.ctrlKey &&
  !event.metaKey &&
  !event.altKey &&
  !event.defaultPrevented &&
  !event.isComposing &&
  !(event.target instanceof Element && event.target.closest(TAKES_KEYS)) &&
  singleKeysAreOn()

/**
 * Unfolds, scrolls to and focuses the part of the page that an address names after its #. Says whether there is one.
 * Browsers unfold what a link leads to, but not what the router leads to.
 *
 * @param loaded the page was loaded, so that the browser has scrolled there itself; its reader may have scrolled on since
 */
export function bringIntoSight(hash: string, { loaded = false } = {}): boolean {
  const part = hash.length > 1 ? document.getElementById(decodeURIComponent(hash.slice(1))) : null
  if (!part) return false
  const isFolded = part.closest('details:not([open])') !== null
  for (let fold = part.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
    fold.open = true
  if (!loaded || isFolded) part.scrollIntoView()
  if (!part.hasAttribute('tabindex')) part.tabIndex = -1
  part.focus({ preventScroll: true })
  return true
}

/**
 * Whether somebody was at work on a loaded page before its scripts were: called back to its head then, they would lose
 * their place, or a click between pressing and letting go.
 */
export const isAtWork = (): boolean =>
  (document.activeElement !== null && document.activeElement !== document.body) ||
  (location.hash === '' && scrollY > 0)

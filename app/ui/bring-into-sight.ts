/**
 * Unfolds, scrolls to and focuses the part of the page that an address names after its #. Says whether there is one.
 * Browsers unfold what a link leads to, but not what the router leads to.
 */
export function bringIntoSight(hash: string): boolean {
  const part = hash.length > 1 ? document.getElementById(decodeURIComponent(hash.slice(1))) : null
  if (!part) return false
  for (let fold = part.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
    fold.open = true
  part.scrollIntoView()
  if (!part.hasAttribute('tabindex')) part.tabIndex = -1
  part.focus({ preventScroll: true })
  return true
}

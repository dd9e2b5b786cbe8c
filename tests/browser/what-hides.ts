import type { Locator } from 'playwright/test'

/** Where a box stands, from itself outwards, for a failure that only says that it cannot be seen. */
export const whatHides = (box: Locator): Promise<string> =>
  box.first().evaluate((element) => {
    const lines: string[] = []
    for (let at: Element | null = element; at; at = at.parentElement) {
      const { width, height } = at.getBoundingClientRect()
      const { display, visibility } = getComputedStyle(at)
      const folded = at instanceof HTMLDetailsElement && !at.open ? ', folded' : ''
      const name = `${at.tagName.toLowerCase()}.${at.className.toString().replaceAll(' ', '.')}`
      lines.push(`${name}: ${display}, ${visibility}, ${width} × ${height}${folded}`)
    }
    return `${document.visibilityState} ${location.href}\n${lines.join('\n')}`
  })

import type { Page } from 'playwright/test'

/** What of the pictures and tables of a page cannot be read as it stands. */
export interface PictureFaults {
  /** Pictures that hold text. */
  readonly pictures: number
  readonly faults: readonly string[]
}

/**
 * Texts of a picture that stand on one another or leave the picture, and cells of tables whose text is cut. A text is
 * taken as the box around its letters, turned as it is turned.
 */
export const pictureFaults = (page: Page): Promise<PictureFaults> => page.evaluate(faultsInSight)

/** Runs in the browser, and so is whole in itself. */
function faultsInSight(): PictureFaults {
  type Corner = readonly [x: number, y: number]
  const TOUCHING_PX = 1.5
  /** Of a text's height, above and below: the room that the font keeps beyond its letters. */
  const BEYOND_LETTERS = 0.18

  const inSight = (element: Element): boolean =>
    element.checkVisibility() && element.getBoundingClientRect().width > 1
  const said = (text: Element): string => `“${(text.textContent ?? '').trim().slice(0, 40)}”`

  const cornersOf = (text: SVGTextElement): Corner[] => {
    const { x, y, width, height } = text.getBBox()
    const onScreen = text.getScreenCTM()!
    const [top, bottom] = [y + height * BEYOND_LETTERS, y + height * (1 - BEYOND_LETTERS)]
    return [
      [x, top],
      [x + width, top],
      [x + width, bottom],
      [x, bottom],
    ].map(([left, up]) => {
      const at = new DOMPoint(left, up).matrixTransform(onScreen)
      return [at.x, at.y]
    })
  }
  /** Two turned boxes are apart where a side of one of them has all of the other beyond it. */
  const overlap = (one: readonly Corner[], other: readonly Corner[]): boolean =>
    [one, other].every((box) =>
      box.every((corner, at) => {
        const next = box[(at + 1) % box.length]!
        const length = Math.hypot(next[0] - corner[0], next[1] - corner[1]) || 1
        const across: Corner = [(next[1] - corner[1]) / length, (corner[0] - next[0]) / length]
        const reach = (corners: readonly Corner[]) => {
          const along = corners.map(([x, y]) => x * across[0] + y * across[1])
          return [Math.min(...along), Math.max(...along)] as const
        }
        const [[from, to], [otherFrom, otherTo]] = [reach(one), reach(other)]
        return Math.min(to, otherTo) - Math.max(from, otherFrom) > TOUCHING_PX
      }),
    )
  const leaves = (corners: readonly Corner[], box: DOMRect): boolean =>
    corners.some(
      ([x, y]) =>
        x < box.left - TOUCHING_PX ||
        x > box.right + TOUCHING_PX ||
        y < box.top - TOUCHING_PX ||
        y > box.bottom + TOUCHING_PX,
    )

  const faults: string[] = []
  let pictures = 0
  for (const picture of document.querySelectorAll('main svg')) {
    if (!(picture instanceof SVGSVGElement) || picture.ownerSVGElement || !inSight(picture)) continue
    const texts = [...picture.querySelectorAll('text')].filter(
      (text) => text.textContent?.trim() && text.getClientRects().length > 0,
    )
    if (texts.length === 0) continue
    pictures++
    const name = picture.querySelector('title')?.textContent ?? picture.getAttribute('class') ?? 'a picture'
    const placed = texts.map((text) => ({ text, corners: cornersOf(text) }))
    const box = picture.getBoundingClientRect()
    for (const [at, { text, corners }] of placed.entries()) {
      if (leaves(corners, box)) faults.push(`${name}: ${said(text)} leaves the picture`)
      for (const other of placed.slice(at + 1))
        if (overlap(corners, other.corners))
          faults.push(`${name}: ${said(text)} stands on ${said(other.text)}`)
    }
  }
  for (const cell of document.querySelectorAll('main :is(td, th)')) {
    for (const element of [cell, ...cell.querySelectorAll('*')]) {
      if (element.matches('input, select, textarea, .sr-only') || !inSight(element)) continue
      const { overflowX } = getComputedStyle(element)
      const isCut = overflowX === 'hidden' || overflowX === 'clip'
      if (isCut && element.scrollWidth > element.clientWidth + 1)
        faults.push(
          `${said(element)} is cut in its cell: ${element.scrollWidth} px in ${element.clientWidth}`,
        )
    }
  }
  // On a phone a table may be moved in its box; where there is room for a desk it stands whole.
  const isDesk = window.innerWidth > 1000
  for (const table of isDesk ? document.querySelectorAll('main .drawing .ruled-scroll') : [])
    if (inSight(table) && table.scrollWidth > table.clientWidth + 1)
      faults.push(`${said(table)} runs out of its box: ${table.scrollWidth} px in ${table.clientWidth}`)
  return { pictures, faults: [...new Set(faults)] }
}

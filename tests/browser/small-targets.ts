import type { Page } from 'playwright/test'

/** Something to tap, in CSS px of the page. */
export interface Target {
  readonly name: string
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

/** The least width and height of a target: WCAG 2.2, success criterion 2.5.8. */
export const LEAST_PX = 24

/**
 * Targets that are smaller than 24 by 24 px and whose circle of 24 px around their middle meets another target, or the
 * circle of another small one (WCAG 2.2, 2.5.8, “Spacing”).
 */
export function tooCrowded(targets: readonly Target[]): Target[] {
  return targets.filter(
    (target) => isSmall(target) && targets.some((other) => other !== target && meets(target, other)),
  )
}

/** Half a px is what drawing rounds away. */
const isSmall = ({ width, height }: Target): boolean => Math.min(width, height) < LEAST_PX - 0.5

function meets(small: Target, other: Target): boolean {
  const [x, y] = middleOf(small)
  const [otherX, otherY] = middleOf(other)
  if (isSmall(other) && Math.hypot(x - otherX, y - otherY) < LEAST_PX - 0.5) return true
  const beyond = (at: number, from: number, length: number) => Math.max(from - at, 0, at - from - length)
  return (
    Math.hypot(beyond(x, other.left, other.width), beyond(y, other.top, other.height)) < LEAST_PX / 2 - 0.5
  )
}

const middleOf = ({ left, top, width, height }: Target): readonly [x: number, y: number] => [
  left + width / 2,
  top + height / 2,
]

/** What of a page is too small to be tapped as it stands, each named. */
export const smallTargets = async (page: Page): Promise<string[]> =>
  tooCrowded(await page.evaluate(targetsInSight)).map(
    ({ name, width, height }) => `${name}: ${Math.round(width)} × ${Math.round(height)} px`,
  )

/** Runs in the browser, and so is whole in itself. What stands in a line of text is no target of its own (“Inline”). */
function targetsInSight(): Target[] {
  const CAN_BE_TAPPED =
    'a[href], button, summary, select, textarea, input:not([type="hidden"]), [role="button"], [tabindex="0"][role]'
  const isInLine = (element: Element): boolean => {
    if (getComputedStyle(element).display !== 'inline') return false
    let line = element.parentElement
    while (line && getComputedStyle(line).display === 'inline') line = line.parentElement
    const own = (element.textContent ?? '').trim().length
    return (line?.textContent ?? '').trim().length > own
  }
  return [...document.querySelectorAll(CAN_BE_TAPPED)].flatMap((element) => {
    if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) return []
    if (element.matches(':disabled') || element.closest('.sr-only, [inert]') || isInLine(element)) return []
    // A label is part of its box.
    const boxes = [element, ...((element as HTMLInputElement).labels ?? [])].map((part) =>
      part.getBoundingClientRect(),
    )
    const own = boxes[0]!
    if (own.width < 2 || own.height < 2 || own.right <= 0) return []
    const tapped = element.matches('[type="radio"], [type="checkbox"], [type="file"]') ? boxes : [own]
    const left = Math.min(...tapped.map((box) => box.left))
    const top = Math.min(...tapped.map((box) => box.top))
    const text = (element.getAttribute('aria-label') ?? element.textContent ?? '').trim().slice(0, 40)
    return [
      {
        name: `${element.tagName.toLowerCase()}.${element.className} “${text}” ${element.getAttribute('name') ?? ''}`,
        left,
        top: top + scrollY,
        width: Math.max(...tapped.map((box) => box.right)) - left,
        height: Math.max(...tapped.map((box) => box.bottom)) - top,
      },
    ]
  })
}

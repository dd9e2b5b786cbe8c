import type { Page } from 'playwright/test'

/** What people do at a screen: clicks on links, buttons, folds and ticks; boxes filled in; passwords typed. */
export interface Acts {
  clicks: number
  fields: number
  passwords: number
}

/**
 * Counts what is done on a page from here on, by itself: the page reports each click and each box that was filled in,
 * whoever did it and however often it is loaded anew. A box counts each time it is filled in, a paste into a table once.
 */
export async function countActs(page: Page): Promise<Acts> {
  const acts: Acts = { clicks: 0, fields: 0, passwords: 0 }
  await page.exposeFunction('reportAct', (kind: keyof Acts) => {
    acts[kind]++
  })
  await page.addInitScript(() => {
    const report = (kind: string) =>
      (window as unknown as { reportAct: (kind: string) => void }).reportAct(kind)
    let typedInto: EventTarget | null = null
    const isChosen = (box: Element) =>
      box.matches('input[type=checkbox], input[type=radio], input[type=file], button, summary, a')
    document.addEventListener(
      'click',
      (event) => {
        typedInto = null
        const at =
          event.target instanceof Element ? event.target.closest('a, button, summary, input, select') : null
        if (event.isTrusted && at && (isChosen(at) || at.matches('select'))) report('clicks')
      },
      true,
    )
    // One box is one act, however many letters are typed into it.
    document.addEventListener(
      'input',
      (event) => {
        const box = event.target
        if (!(box instanceof Element) || box === typedInto) return
        if (box.matches('input[type=file]')) report('clicks')
        // What a script fills in, as the cells of a paste, nobody typed.
        if (!event.isTrusted || isChosen(box)) return
        typedInto = box
        report(box.matches('input[type=password]') ? 'passwords' : 'fields')
      },
      true,
    )
    document.addEventListener('paste', () => report('fields'), true)
  })
  return acts
}

export const actsInAll = (all: readonly Acts[]): number =>
  all.reduce((sum, { clicks, fields, passwords }) => sum + clicks + fields + passwords, 0)

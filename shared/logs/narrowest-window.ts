import { bothWindows, type ProcessWindow } from './logged-window'

/** What programmes ask of one quantity of a shared machine: each window, and what is common to all of them. */
export interface SharedWindow {
  readonly of: readonly { readonly programme: string; readonly window: ProcessWindow }[]
  /** Where they have nothing in common, its lower bound lies above its upper. */
  readonly narrowest: ProcessWindow | undefined
}

/** Windows of one quantity in one unit, as each programme specifies them; of a programme that specifies none there is none. */
export function sharedWindow(
  windows: readonly { readonly programme: string; readonly window: ProcessWindow | undefined }[],
): SharedWindow {
  const of = windows.flatMap(({ programme, window }) => (window ? [{ programme, window }] : []))
  return {
    of,
    narrowest: of.reduce<ProcessWindow | undefined>(
      (narrowest, { window }) => (narrowest ? bothWindows(narrowest, window) : window),
      undefined,
    ),
  }
}

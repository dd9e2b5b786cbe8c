/** Names the box of an item in an address, where no name may stand twice. */
export const itemBox = (item: string): string => `${BOX}${item}`

const BOX = 'item.'

/** The items that an address names: the one of a link, and those ticked. */
export function itemsInAddress(asked: Readonly<Record<string, string | undefined>>): string[] {
  const ticked = Object.keys(asked).flatMap((name) => (name.startsWith(BOX) ? [name.slice(BOX.length)] : []))
  return asked['item'] === undefined ? ticked : [asked['item'], ...ticked]
}

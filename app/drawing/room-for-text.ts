/** The largest that letters of a picture get, in its own units: where it is drawn on a phone. */
const LARGEST_TEXT = { normal: 13.5, wide: 15 } as const

/** A figure of a wide sans face is so much of its height across; other letters are narrower on the whole. */
const WIDEST_FIGURE = 0.64

/** Units across that the longest of some texts takes at its largest; 0 where there is none. */
export const roomForText = (texts: readonly string[], size: keyof typeof LARGEST_TEXT = 'normal'): number =>
  Math.ceil(Math.max(0, ...texts.map((text) => [...text].length)) * WIDEST_FIGURE * LARGEST_TEXT[size])

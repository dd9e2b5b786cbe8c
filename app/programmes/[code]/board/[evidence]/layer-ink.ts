/** How a layer is inked in the picture of a board, by the code of its role; what lies over copper lets it through. */
const INKS: readonly (readonly [RegExp, string])[] = [
  [/^copper-bottom$/, 'fill="#5b7280"'],
  [/^copper-inner/, 'fill="#8a7440" fill-opacity="0.85"'],
  [/^copper/, 'fill="#b05f28"'],
  [/^mask/, 'fill="#2f6b4a" fill-opacity="0.45"'],
  [/^legend/, 'fill="#211e1a" fill-opacity="0.75"'],
]

export const layerInk = (code: string): string => INKS.find(([pattern]) => pattern.test(code))?.[1] ?? ''

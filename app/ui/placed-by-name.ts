/** A drawing kept under a name, as text. */
export const toPlace = (name: string, markup: string): string => `<g id="${name}">${markup}</g>`

/** That drawing again, at a point of the picture around it. */
export const placed = (name: string, at?: { readonly x: number; readonly y: number }): string =>
  at ? `<use href="#${name}" x="${at.x}" y="${at.y}"/>` : `<use href="#${name}"/>`

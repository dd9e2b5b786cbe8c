/** The narrow card on the page, for the button that draws it out. */
export const NARROW_CARD = 'narrow-card'

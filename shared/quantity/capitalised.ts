/** A text with its first letter as a sentence begins. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

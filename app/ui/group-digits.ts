/** Digits in threes by a narrow space (ISO 80000-1), from text grouped by commas; minus signs real. */
export const groupDigits = (text: string): string => text.replaceAll(',', '\u202f').replace(/^-/, '−')

/** A count: "62 000". */
export const countText = (count: number): string => groupDigits(count.toLocaleString('en-GB'))

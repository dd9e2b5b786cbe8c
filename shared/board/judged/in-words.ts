import { formatQuantity } from '@/shared/quantity/format'

/** Files are read to about a micrometre: less is no difference. */
export const toMicrometre = (mm: number): number => Math.round(mm * 1000) / 1000

/** A length of the board in words, to the micrometre. */
export const inMm = (mm: number): string => formatQuantity(toMicrometre(mm), 'mm', 6)

/* What people can put into an address, read so that the database can be asked for it. */

const LAST_PAGE = 100_000
const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/

/** A text to look for; the database refuses to look for U+0000, which no text holds. */
export const textFromAddress = (given: unknown, max = 100): string =>
  typeof given === 'string' ? given.replaceAll('\0', '').trim().slice(0, max) : ''

/** Which page of a list, 1 when it is no number that could be one. */
export const pageFromAddress = (given: unknown): number =>
  Math.max(1, Math.min(LAST_PAGE, Math.trunc(Number(textFromAddress(given))) || 1))

/** A UUID as PostgreSQL writes it, which is the only form the database is asked for. */
export const isUuid = (given: string): boolean => UUID.test(given)

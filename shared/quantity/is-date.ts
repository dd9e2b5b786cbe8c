const SHAPE = /^\d{4}-\d\d-\d\d$/

/**
 * True for a date of the years 1 to 9999 that exists: '2028-02-29' is one, '2027-02-29' is not. Apart from the
 * calendar's arithmetic, so that a form that only asks this does not carry the rest to the browser.
 */
export function isDate(text: string): boolean {
  if (!SHAPE.test(text) || text < '0001-01-01') return false
  const midnight = new Date(`${text}T00:00:00Z`)
  // The platform knows no 32nd day or 13th month, but takes 30 February for 2 March.
  return !Number.isNaN(midnight.getTime()) && midnight.toISOString().startsWith(text)
}

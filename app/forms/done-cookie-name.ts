/** The cookie by which the page that comes next says what was done. */
export const DONE_COOKIE = 'liquidus-done'

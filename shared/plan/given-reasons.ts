/*
 * Reasons that the program itself gives a revision. They are stored with it, and verification
 * holds the stored ones against them, so that their words must stay as they are.
 */

export const GIVEN_AT_OPENING = 'Given when the programme was opened.'

/** The reason of every revision that an adopted alternative brings. */
export const givenByAdoption = (study: number, alternative: string, why: string): string =>
  `Option study ${study}, “${alternative}”: ${why}`

/** The reason of every value, limit and proposal that a programme takes over from another. */
export const takenOverFrom = (programme: string, revision?: number): string =>
  `Taken over from ${programme}${revision === undefined ? '' : `, revision ${revision} there`}.`

/** The reason of a value that a programme starts with because the works prefer it. */
export const preferredByTheWorks = (why: string): string => `Preferred by the works: ${why}`

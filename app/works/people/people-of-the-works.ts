/** Names the people of the works to a command that may also be about something else. */
export const PEOPLE_OF_THE_WORKS = { 'works.kind': 'people', 'works.code': 'people' } as const

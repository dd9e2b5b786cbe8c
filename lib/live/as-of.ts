/** What an address of news says of the facts that the page was drawn as of. */
export const AS_OF = 'as-of'

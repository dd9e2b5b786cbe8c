/** The letter that stands for an alternative where its name does not fit: A for the first. */
export const letterOf = (position: number): string => String.fromCharCode(65 + position)

/** "1 row", "3 rows" */
export const counted = (count: number, one: string, several: string): string =>
  `${count} ${count === 1 ? one : several}`

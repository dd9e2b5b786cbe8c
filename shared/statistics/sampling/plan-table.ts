/** A cell that holds a plan, and the letter and sample size of its row. */
export interface TableCell {
  letter: string
  sampleSize: number
  /** As printed: '2/3', '0/3,3/4' in a double plan, '1.53' in a variables plan. */
  text: string
}

/**
 * Reads a printed plan table at a row and column and follows the arrows: ↓ to the first plan below,
 * ↑ to the first above. The first line of the table names its columns.
 *
 * Errors: RangeError for a letter or column that the table does not have, or an arrow that leads out of it.
 */
export function readPlanTable(table: string, letter: string, column: string): TableCell {
  const [heading, ...rows] = linesOf(table)
  const index = heading!.indexOf(column)
  if (index < 2) throw new RangeError(`The table has no column for AQL ${column}.`)
  let at = rows.findIndex((row) => row[0] === letter)
  if (at < 0) throw new RangeError(`The table has no row for letter ${letter}.`)
  for (;;) {
    const row = rows[at]
    const text = row?.[index]
    if (row === undefined || text === undefined) {
      throw new RangeError(`The arrow at letter ${letter}, AQL ${column} leads out of the table.`)
    }
    if (text !== '↓' && text !== '↑') return { letter: row[0]!, sampleSize: Number(row[1]), text }
    at += text === '↓' ? 1 : -1
  }
}

/** The letters that a table has rows for. */
export const lettersOf = (table: string): string[] =>
  linesOf(table)
    .slice(1)
    .map((row) => row[0]!)

/** Every line as its words: letter, sample size, one cell a column. */
const linesOf = (table: string): string[][] =>
  table
    .trim()
    .split('\n')
    .map((line) => line.split(/ +/))

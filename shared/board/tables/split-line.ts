/** What parts the cells of a table that is kept as text; blanks where its columns are aligned. */
export const SEPARATORS = ['\t', ';', ',', '|', 'two blanks', 'a blank'] as const
export type Separator = (typeof SEPARATORS)[number]

/** The cells of one line, trimmed and without their quotation marks; undefined where a quotation mark is not closed. */
export function splitLine(line: string, separator: Separator): string[] | undefined {
  if (separator === 'two blanks')
    return line
      .trim()
      .split(/ {2,}|\t+/)
      .map(unquoted)
  if (separator === 'a blank') return (line.match(/"[^"]*"|\S+/g) ?? []).map(unquoted)
  const cells: string[] = []
  let at = 0
  for (;;) {
    const begin = skipBlanks(line, at)
    if (line[begin] === '"') {
      const end = closingMark(line, begin)
      if (end === undefined) return undefined
      cells.push(
        line
          .slice(begin + 1, end)
          .replaceAll('""', '"')
          .trim(),
      )
      at = line.indexOf(separator, end + 1)
    } else {
      const next = line.indexOf(separator, at)
      cells.push(line.slice(at, next === -1 ? undefined : next).trim())
      at = next
    }
    if (at === -1) return cells
    at++
  }
}

const unquoted = (cell: string): string => cell.replace(/^"(.*)"$/, '$1').trim()

function skipBlanks(line: string, from: number): number {
  let at = from
  while (line[at] === ' ') at++
  return at
}

/** Where the quotation mark is closed that is opened at `begin`; two in a row are one that is meant. */
function closingMark(line: string, begin: number): number | undefined {
  for (let at = begin + 1; at < line.length; at++) {
    if (line[at] !== '"') continue
    if (line[at + 1] !== '"') return at
    at++
  }
  return undefined
}

export type Delimiter = ',' | ';' | '\t'

/** First the one that numbers with a decimal comma cannot contain, then the one that hardly any text contains. */
const CANDIDATES: readonly Delimiter[] = [';', '\t', ',']

export const delimiterInWords = (delimiter: Delimiter): string =>
  ({ ',': 'a comma', ';': 'a semicolon', '\t': 'a tab' })[delimiter]

/**
 * The separator of a CSV text, judged by its first lines: the one that stands in the heading and
 * equally often in the most lines after it. A comma when none does (a single column).
 */
export function detectDelimiter(head: string): Delimiter {
  const lines = head.split(/\r\n|\n|\r/, 12).filter((line) => line.trim() !== '')
  let best: Delimiter = ','
  let bestScore = 0
  for (const candidate of CANDIDATES) {
    const [inHeading = 0, ...counts] = lines.map((line) => countOutsideQuotes(line, candidate))
    const alike = counts.filter((count) => count === inHeading).length
    const score = inHeading === 0 ? 0 : 1 + alike
    if (score > bestScore) [best, bestScore] = [candidate, score]
  }
  return best
}

function countOutsideQuotes(line: string, character: string): number {
  let count = 0
  let quoted = false
  for (const each of line) {
    if (each === '"') quoted = !quoted
    else if (each === character && !quoted) count += 1
  }
  return count
}

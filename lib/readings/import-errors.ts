/** One thing wrong with an imported file. */
export type ImportError = {
  /** Lines are counted from 1, the heading included; 1 for what concerns the file as a whole. */
  readonly line: number
  /** Counted from 1; undefined when the whole line is meant. */
  readonly column: number | undefined
  /** A whole sentence, with line and column. */
  readonly message: string
}

export const MAX_ERRORS_LISTED = 200
const LONGEST_QUOTE = 40

/** Collects errors: all are counted, the first ones listed. */
export class ImportErrors {
  readonly listed: ImportError[] = []
  count = 0

  /** Something wrong with a line. The message says what and what was expected. */
  add(line: number, message: string): void {
    this.put({ line, column: undefined, message: `Line ${line}: ${message}` })
  }

  /** Something wrong with one cell. */
  addCell(line: number, column: number, heading: string, found: string, expected: string): void {
    this.count += 1
    if (this.listed.length >= MAX_ERRORS_LISTED) return
    const what = found === '' ? 'nothing' : `"${shortened(found)}"`
    const message = `Line ${line}, column ${column} (${shortened(heading)}): found ${what}, expected was ${expected}.`
    this.listed.push({ line, column, message })
  }

  private put(error: ImportError): void {
    this.count += 1
    if (this.listed.length < MAX_ERRORS_LISTED) this.listed.push(error)
  }
}

/** As much of a text as fits into a message, without anything that would break the line. */
export function shortened(text: string): string {
  const plain = text.replace(/\p{C}+/gu, ' ')
  return plain.length > LONGEST_QUOTE ? `${plain.slice(0, LONGEST_QUOTE)}…` : plain
}

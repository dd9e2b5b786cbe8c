import { decimalTyped } from '@/shared/quantity/decimal-typed'
import { callMeantBy } from './call-meant'

/** One call as a line of a table gives it. */
export interface CallPasted {
  readonly inspector: string
  readonly joint: string
  readonly call: string
  readonly round: number
  readonly reference?: string
}

const HEADING = /^inspector\b/i

/**
 * The calls of lines parted by tab, semicolon or comma: inspector, joint, call,
 * round, known to be. The round is the first unless said. A line of headings at
 * the top is passed over.
 */
export function callsPasted(lines: string): CallPasted[] {
  return lines
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line, at) => line !== '' && !(at === 0 && HEADING.test(line)))
    .map((line) => {
      const parting = ['\t', ';', ','].find((mark) => line.includes(mark)) ?? ';'
      const [inspector = '', joint = '', call = '', round = '', known = ''] = line
        .split(parting)
        .map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'))
      return {
        inspector,
        joint,
        call: callMeantBy(call),
        round: round === '' ? 1 : (decimalTyped(round) ?? NaN),
        ...(known !== '' && { reference: callMeantBy(known) }),
      }
    })
}

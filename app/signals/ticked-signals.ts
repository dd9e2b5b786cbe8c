import { Refused } from '@/shared/refused'

const PREFIX = 'signal:'

/** The name of the box that ticks one signal: what an answer names it by, in order. No quotation mark, which forms do not carry in a name. */
export const tickName = (names: readonly string[]): string => PREFIX + names.map(encodeURIComponent).join('|')

/** What the ticked boxes of a form name, in the order of the form. */
export const tickedSignals = (form: FormData): (readonly string[])[] =>
  [...form.keys()]
    .filter((key) => key.startsWith(PREFIX))
    .map((key) => key.slice(PREFIX.length).split('|').map(decoded))

/** The same, for an answer, which has to be to something. */
export function signalsAnswered(form: FormData): (readonly string[])[] {
  const ticked = tickedSignals(form)
  if (ticked.length === 0) throw new Refused('Tick the signals that this answers.')
  return ticked
}

/** A name that was tampered with stays as it is, and answers nothing. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}

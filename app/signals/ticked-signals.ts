const PREFIX = 'signal:'

export const NOTHING_TICKED = 'Tick the signals that this answers.'

/** The name of the box that ticks one signal: what an answer names it by, in order. */
export const tickName = (names: readonly string[]): string => PREFIX + JSON.stringify(names)

/** What the ticked boxes of a form name, in the order of the form. */
export function tickedSignals(form: FormData): (readonly string[])[] {
  return [...form.keys()].flatMap((key) => {
    const names = key.startsWith(PREFIX) ? namesIn(key.slice(PREFIX.length)) : undefined
    return names ? [names] : []
  })
}

function namesIn(text: string): readonly string[] | undefined {
  try {
    const names: unknown = JSON.parse(text)
    return Array.isArray(names) && names.every((name) => typeof name === 'string') ? names : undefined
  } catch {
    return undefined
  }
}

import type { Facts } from './facts'
import { readableOf, take, type Inputs, type Reads } from './rule'

/** What such reads yield today, for a screen that shows what a rule looks at; undefined while a read that cannot be done without is missing. */
export function inputsOf<R extends Reads>(reads: R, facts: Facts): Inputs<R> | undefined {
  const inputs: Record<string, unknown> = {}
  for (const [name, read] of Object.entries(reads)) {
    const value = take(readableOf(read), facts)
    if (value === undefined && read.source !== 'optional') return undefined
    inputs[name] = value
  }
  return inputs as Inputs<R>
}

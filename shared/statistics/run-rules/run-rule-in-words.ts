import { NELSON_1984 } from './nelson'
import { WESTERN_ELECTRIC_1956 } from './western-electric'

/** What signals are answered by that no run rule gives. */
const OTHER_SIGNALS: Readonly<Record<string, string>> = {
  'outside-window': 'a reading outside the window',
  high: 'the sum of what lies above the target beyond its decision interval',
  low: 'the sum of what lies below the target beyond its decision interval',
}

const MESSAGES: ReadonlyMap<string, string> = new Map([
  ...[...WESTERN_ELECTRIC_1956, ...NELSON_1984].map(({ id, message }): [string, string] => [id, message]),
  ...Object.entries(OTHER_SIGNALS),
])

/**
 * What a signal is stored under, as people read it: "western-electric-1" is "a point beyond the control limits",
 * "range:western-electric-1" the same of the ranges. A name this version does not know is given as it is.
 */
export function runRuleInWords(stored: string): string {
  const [panel, rule] = stored.includes(':') ? stored.split(':', 2) : [undefined, stored]
  const message = MESSAGES.get(rule ?? '')
  if (message === undefined) return stored
  return panel === undefined ? message : `${panel.replaceAll('-', ' ')}: ${message}`
}

import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { COMMAND_NAMES, faceOf } from '@/shared/commands/all-faces'
import { BESIDE_THE_DOOR } from '@/shared/commands/beside-the-door'

/** One word of a search of trails, and what entries may hold where people read that word. */
export interface WordSought {
  readonly word: string
  /** Commands whose entries say the word of what was done: "Signed a gate". */
  readonly commands: readonly string[]
  /** Keys, as entries record them, of items, values, limits and findings whose name has the word. */
  readonly keys: readonly string[]
}

const MOST_WORDS = 8
/** Shorter words are in nearly every name. */
const SHORTEST_NAMED = 3

/**
 * What a search of trails looks for, word by word. Entries record commands and keys; people read verbs and names, so
 * the search finds both.
 */
export function wordsSought(text: string): WordSought[] {
  const words = text.trim().split(/\s+/).filter(Boolean).slice(0, MOST_WORDS)
  return words.map((word) => {
    if (word.length < SHORTEST_NAMED) return { word, commands: [], keys: [] }
    const says = (name: string): boolean => name.toLowerCase().includes(word.toLowerCase())
    return {
      word,
      commands: VERBS.filter(([, done]) => says(done)).map(([command]) => command),
      keys: NAMES.filter(([, name]) => says(name)).map(([key]) => key),
    }
  })
}

const VERBS: readonly (readonly [command: string, done: string])[] = [
  ...COMMAND_NAMES.map((name) => [name, faceOf(name).done] as const),
  ...Object.entries(BESIDE_THE_DOOR).map(([name, { done }]) => [name, done] as const),
]

const NAMES: readonly (readonly [key: string, name: string])[] = [
  ...new Map(
    STANDARD_PLAN.flatMap(({ key, title, parameters, limits, rules }) => [
      [key, title] as const,
      ...[...parameters, ...limits].map((one) => [one.key, one.label] as const),
      ...rules.map((rule) => [rule.id, rule.title] as const),
    ]),
  ),
]

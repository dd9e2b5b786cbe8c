import { ALL_LIMITS, ALL_PARAMETERS, ALL_RULES, STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import type { Column } from '@/shared/columns/column'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { CHARACTERISTICS } from '@/shared/records/characteristics'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { runRuleInWords } from '@/shared/statistics/run-rules/run-rule-in-words'

type Named = readonly [key: string, label: string]

const optionsOf = (columns: Readonly<Record<string, Column>>): Named[] =>
  Object.values(columns).flatMap((column) =>
    column.kind === 'choice' ? column.options.map(({ value, label }): Named => [value, label]) : [],
  )

const DECLARED = [RECORD_KINDS, CHARACTERISTICS, TEST_METHODS].flatMap((kinds) =>
  Object.entries<{ readonly label: string; readonly columns: Readonly<Record<string, Column>> }>(kinds),
)

/** What comes first is what a key means where it stands in several lists. */
const NAMED: readonly Named[] = [
  ...STANDARD_PLAN.map(({ key, title }): Named => [key, title]),
  ...[...ALL_PARAMETERS, ...ALL_LIMITS].map(({ key, label }): Named => [key, label]),
  ...ALL_RULES.map(({ id, title }): Named => [id, title]),
  ...DECLARED.map(([key, { label }]): Named => [key, label]),
  ...ALL_PARAMETERS.flatMap(({ shape }) =>
    optionsOf(shape.kind === 'table' ? shape.columns : { value: shape.column }),
  ),
  ...DECLARED.flatMap(([, { columns }]) => optionsOf(columns)),
]

const LABELS: ReadonlyMap<string, string> = new Map([...NAMED].reverse())

/** No word of any language: parted by hyphens, or with a figure or a capital inside. */
const looksStored = (text: string): boolean => /^[a-z0-9]+(-[a-z0-9]+)+$|[a-z]\d|[a-z][A-Z]/.test(text)

/**
 * What a closed list or the catalogue stores under a key, as people read it: "sn60pb40" as "Sn60Pb40". For
 * values whose list is not at hand, as in an entry of any command; a text that is no key is given as it is.
 */
export const keyInWords = (stored: string): string =>
  looksStored(stored) ? (LABELS.get(stored) ?? runRuleInWords(stored)) : stored

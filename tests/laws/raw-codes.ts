import { ALL_LIMITS, ALL_PARAMETERS, ALL_RULES, STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import type { Column } from '@/shared/columns/column'
import { COMMAND_NAMES } from '@/shared/commands/all-faces'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { CHARACTERISTICS } from '@/shared/records/characteristics'
import { RECORD_KINDS } from '@/shared/records/record-kinds'

/** A value that is stored under a key, and how people are told it. */
interface Listed {
  readonly key: string
  readonly label: string
}

const optionsOf = (columns: Readonly<Record<string, Column>>): Listed[] =>
  Object.values(columns).flatMap((column) =>
    column.kind === 'choice' ? column.options.map(({ value, label }) => ({ key: value, label })) : [],
  )

const OF_PARAMETERS = ALL_PARAMETERS.flatMap(({ shape }) =>
  optionsOf(shape.kind === 'table' ? shape.columns : { value: shape.column }),
)

const OF_RECORDS = [RECORD_KINDS, CHARACTERISTICS, TEST_METHODS].flatMap((kinds) =>
  Object.values(kinds as Readonly<Record<string, { columns: Readonly<Record<string, Column>> }>>).flatMap(
    ({ columns }) => optionsOf(columns),
  ),
)

const NAMED: readonly Listed[] = [
  ...STANDARD_PLAN.map(({ key, title }) => ({ key, label: title })),
  ...[...ALL_PARAMETERS, ...ALL_LIMITS].map(({ key, label }) => ({ key, label })),
  ...ALL_RULES.map(({ id, title }) => ({ key: id, label: title })),
  ...[RECORD_KINDS, CHARACTERISTICS, TEST_METHODS].flatMap((kinds) =>
    Object.entries(kinds).map(([key, { label }]) => ({ key, label })),
  ),
  ...Object.values(RUN_RULE_SETS).flatMap(({ drawn }) => drawn.map(({ id }) => ({ key: id, label: '' }))),
  ...COMMAND_NAMES.map((key) => ({ key, label: '' })),
]

/** Words of the trade, which some keys are as well. */
const ALSO_WORDS: ReadonlySet<string> = new Set([
  'tin-lead',
  'wetting-balance',
  'plating-thickness',
  'zero-acceptance',
])

const looksLikeCode = (key: string): boolean => /[-_]|[a-z][A-Z]|[a-z]\d/.test(key)

const KEYS: ReadonlySet<string> = new Set(
  [...OF_PARAMETERS, ...OF_RECORDS, ...NAMED]
    .filter(({ key, label }) => looksLikeCode(key) && !label.toLowerCase().includes(key.toLowerCase()))
    .map(({ key }) => key)
    .filter((key) => !ALSO_WORDS.has(key)),
)

/** The keys of closed lists that stand in a text for people as they are stored. */
export const rawCodesIn = (text: string): string[] =>
  (text.match(/[A-Za-z0-9]+(?:[-_][A-Za-z0-9]+)*/g) ?? []).filter((word) => KEYS.has(word))

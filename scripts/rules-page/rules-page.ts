import { NO_BOARD } from '@/scripts/rules-page/no-board'
import { rulesOnBoard } from '@/shared/board/judged/board-findings'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { STAGES, STAGE_NAMES } from '@/shared/plan/stage'
import type { Limit } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Source } from '@/shared/sources/source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import type { Facts } from '@/shared/rules/facts'
import { judge, readableOf, type AnyRule } from '@/shared/rules/rule'
import { demoState } from '@/tests/rules/demo/demo-state'
import { howChecked, howCheckedOnBoards, testFiles, type Check } from './how-checked'

const HEAD = [
  '# Rules',
  '',
  'Written by `npm run rules-page` from the declarations of the rules and from their tests; a test fails while it is out of date. Do not edit it.',
  '',
  'Of each rule: what it protects against, what it compares, the limits it reads with their defaults and where those come from, what else its finding on the demo’s LX-41 rests on, and which tests try it with the sources that their checks name. A limit’s default holds until a programme states another. Tables a rule looks up (alloys, laminates, spacings…) are in `shared/materials/`, each row with its source; of those, only the rows that LX-41 uses are named.',
  '',
  'Beside what is listed, `tests/laws/` tries every rule of a stage on any specification and on none: none meets on nothing, every finding holds as data what its sentences say, a looser limit never turns what meets into what fails.',
]

const ON_BOARDS = [
  '',
  '## The board as its files have it',
  '',
  'Judged on production files, by what the programme specifies; no gate waits for it, and nothing of it is stored or signed. `tests/laws/board-placing.test.ts` judges boards that are moved, turned, mirrored and written in the other unit alike.',
]

/** docs/rules.md: one entry a rule of every stage, in the order of the route card. */
export function rulesPage(root: string): string {
  const files = testFiles(root)
  const { facts } = demoState('lx-41')
  const lines = STAGES.flatMap((stage) => {
    const rules = STANDARD_PLAN.filter((item) => item.stage === stage).flatMap((item) => item.rules)
    if (rules.length === 0) return []
    return [
      '',
      `## ${STAGE_NAMES[stage]}`,
      ...rules.flatMap((rule) => entryOf(rule, facts, howChecked(rule.id, files))),
    ]
  })
  const onBoards = rulesOnBoard(NO_BOARD).flatMap((rule) =>
    entryOf(rule, undefined, howCheckedOnBoards(rule.id, files)),
  )
  return `${[...HEAD, ...lines, ...ON_BOARDS, ...onBoards].join('\n')}\n`
}

function entryOf(rule: AnyRule, facts: Facts | undefined, checks: readonly Check[]): string[] {
  return [
    '',
    `### ${rule.title}`,
    '',
    `\`${rule.id}\`, version ${rule.version}. ${plain(rule.why)}`,
    '',
    `- **Compares:** ${plain(rule.formula)}`,
    ...limitLines(rule),
    ...(facts ? sourceLines(rule, facts) : []),
    ...checkLines(checks),
  ]
}

/** The register of documents is judged over every limit there is: listing them all would say nothing. */
const MAX_LISTED = 60

const limitsOf = ({ reads }: AnyRule): Limit[] =>
  Object.values(reads)
    .map(readableOf)
    .flatMap((read) => (read.source === 'limit' ? [read] : []))

function limitLines(rule: AnyRule): string[] {
  const limits = limitsOf(rule)
  if (limits.length === 0)
    return ['- **Limits:** none of its own; what it compares is specified, or in a table.']
  if (limits.length > MAX_LISTED) return [`- **Limits:** all ${limits.length} of the plan.`]
  return ['- **Limits:**', ...limits.map((limit) => `  - ${limitText(limit)}`)]
}

const limitText = ({ label, unit, direction, byDefault }: Limit): string =>
  `${plain(label)}: ${direction} ${formatQuantity(byDefault.value, unit, 6)} (${byDefault.authority}). ${sourceText(byDefault.from)}`

/** What a finding rests on beside its limits: formulas, tables, practice. Of the demo's board in service. */
function sourceLines(rule: AnyRule, facts: Facts): string[] {
  const ofLimits = new Set(limitsOf(rule).map(({ byDefault }) => byDefault.from.cite))
  const further = distinctSources(judge(rule, facts).sources).filter(({ cite }) => !ofLimits.has(cite))
  if (further.length === 0) return []
  return ['- **Formulas and tables:**', ...further.map((source) => `  - ${sourceText(source)}`)]
}

const sourceText = ({ cite, how }: Source): string => `${plain(cite)} (${how})`

const checkLines = (checks: readonly Check[]): string[] =>
  checks.length === 0
    ? ['- **Checked:** by the laws of its stage alone.']
    : [
        '- **Checked:**',
        ...checks.flatMap(({ file, sources }) => [
          `  - \`${file}\``,
          ...sources.map((source) => `    - ${plain(source)}`),
        ]),
      ]

/** So that a formula's stars, bars and underscores are no markup. */
const plain = (text: string): string => text.replace(/[\\`*_|<>]/g, '\\$&')

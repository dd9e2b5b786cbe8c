import { describe, expect, test } from 'vitest'
import { judgeProgramme, type Judgement } from '@/shared/gate/judgement'
import type { Finding, Margin, Remedy } from '@/shared/rules/finding'
import { DEMO_PROGRAMMES, demoState } from './demo-state'

/*
 * What the demo comes to, as data and without a sentence: a change of form
 * leaves every line as it is, a change of substance shows which findings it
 * turns. Where a line ought to change, read each one and run this file with -u.
 */
describe.each(DEMO_PROGRAMMES)('The demo’s %s', (programme) => {
  const judgement = judgeProgramme(demoState(programme))

  test('has the findings it had', async () => {
    const lines = [...judgement.findings.values()].map(findingLine)
    await expect(text(lines)).toMatchFileSnapshot(`findings/${programme}.txt`)
  })

  test('has the statuses, approvals and gates it had', async () => {
    await expect(text(statusLines(judgement))).toMatchFileSnapshot(`statuses/${programme}.txt`)
  })
})

const text = (lines: readonly string[]): string => `${lines.join('\n')}\n`

function findingLine({ rule, version, verdict, margin, remedy, missing, parts }: Finding): string {
  const partLines = (parts ?? []).map((part) =>
    line([`  ${part.subject}`, part.verdict, marginText(part.margin), remedyText(part.remedy)]),
  )
  const own = line([
    `${rule} v${version}`,
    verdict,
    marginText(margin),
    remedyText(remedy),
    missing && `${missing.length} missing`,
  ])
  return [own, ...partLines].join('\n')
}

const line = (cells: readonly (string | undefined)[]): string => cells.filter(Boolean).join(' | ')

const marginText = (margin: Margin | undefined): string | undefined =>
  margin &&
  `${rounded(margin.found)} ${margin.direction} ${rounded(margin.limit)} ${margin.unit} (${rounded(margin.guardBand)})`

function remedyText(remedy: Remedy | undefined): string | undefined {
  if (!remedy) return undefined
  const { parameter, value, cell } = remedy
  if (cell) return `remedy ${cell.parameter}[${cell.row}].${cell.column} = ${rounded(cell.value)}`
  return parameter === undefined || value === undefined ? 'remedy' : `remedy ${parameter} = ${rounded(value)}`
}

/** Nine digits: another order of summing is no other finding. */
const rounded = (value: number): number => Number(value.toPrecision(9))

const statusLines = ({ items, gates }: Judgement): string[] => [
  ...items.map(({ item, status, openPoints, approvals }) =>
    line([
      item.definition.key,
      status,
      openPoints.map(({ kind, target }) => `${kind} ${target}`).join(', '),
      approvals
        .filter(({ approval }) => approval)
        .map(({ department, holds }) => `${department} ${holds ? 'holds' : 'lapsed'}`)
        .join(', '),
    ]),
  ),
  ...gates.map(({ stage, status, blockers, signatures }) =>
    line([
      `${stage} gate`,
      status,
      `${blockers.length} blockers`,
      signatures
        .filter(({ signature }) => signature)
        .map(({ department, holds }) => `${department} ${holds ? 'holds' : 'lapsed'}`)
        .join(', '),
    ]),
  ),
]

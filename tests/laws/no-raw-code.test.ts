import fc from 'fast-check'
import { expect, test } from 'vitest'
import { judgeProgramme, type Judgement } from '@/shared/gate/judgement'
import type { Finding, Part, Remedy } from '@/shared/rules/finding'
import { DEMO_PROGRAMMES, demoState } from '@/tests/rules/demo/demo-state'
import { anyProgramme } from './any-programme'
import { rawCodesIn } from './raw-codes'

/*
 * What a choice is stored under is no word for people. Common practice, no published source: a closed list
 * has a label for each of its keys, and the label is what is shown.
 */

const remedyText = (remedy: Remedy | undefined): string[] => (remedy ? [remedy.message] : [])

const partTexts = ({ subject, found, remedy }: Part): string[] => [subject, found, ...remedyText(remedy)]

const textsOf = ({
  found,
  limit,
  working,
  sources,
  remedy,
  missing,
  parts,
  notes,
  cautions,
}: Finding): string[] => [
  found,
  limit,
  ...working.flatMap(({ label, formula, numbers, result }) => [label, formula ?? '', numbers ?? '', result]),
  ...sources.map(({ cite }) => cite),
  ...remedyText(remedy),
  ...(missing ?? []),
  ...(parts ?? []).flatMap(partTexts),
  ...(notes ?? []),
  ...(cautions ?? []),
]

const rawIn = ({ judging, items, gates }: Judgement): string[] => [
  ...[...judging.findings.values()].flatMap((finding) =>
    textsOf(finding).flatMap((text) =>
      rawCodesIn(text).map((code) => `${finding.rule}: ${code} in “${text}”`),
    ),
  ),
  ...items.flatMap(({ openPoints }) =>
    openPoints.flatMap(({ message }) => rawCodesIn(message).map((code) => `${code} in “${message}”`)),
  ),
  ...Object.values(gates).flatMap(({ blockers }) =>
    blockers.flatMap(({ message }) => rawCodesIn(message).map((code) => `${code} in “${message}”`)),
  ),
]

test.each(DEMO_PROGRAMMES)('law: nothing found of the demo’s %s shows a stored key', (programme) => {
  expect(rawIn(judgeProgramme(demoState(programme)))).toEqual([])
})

test('law: whatever is specified and recorded, no finding shows a stored key', () => {
  fc.assert(
    fc.property(anyProgramme, (state) => {
      expect(rawIn(judgeProgramme(state))).toEqual([])
    }),
    { numRuns: Number(process.env['ANY_RUNS'] ?? 60) },
  )
})

import { expect, test } from 'vitest'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { findingOf } from '../rules/facts-builder'

/** What is asked for by choice, or asked once something has happened: silence is an answer there. */
const BY_CHOICE_OR_EVENT = [
  'parts-list-counted',
  'parts-described',
  'parts-agree',
  'parts-heat',
  'result-still-fresh',
  'lots-traced',
  'parts-moisture',
  'process-capability',
  'insulation-resistance',
  'inspector-agreement',
  'rework-limits',
  'microsections-sound',
]

test('over every rule, with nothing specified and nothing recorded: nothing meets, and silence makes no matter inapplicable', () => {
  const verdicts = STANDARD_PLAN.flatMap((item) => item.rules).map((rule) => [
    rule.id,
    findingOf(rule).verdict,
  ])
  const decided = verdicts.filter(([, verdict]) => verdict !== 'undetermined')
  expect(decided).toEqual(BY_CHOICE_OR_EVENT.map((id) => [id, 'not applicable']))
})

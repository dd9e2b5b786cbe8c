import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { howChecked } from '@/scripts/rules-page/how-checked'
import { rulesPage } from '@/scripts/rules-page/rules-page'
import { ALL_RULES } from '@/shared/catalogue/standard-plan'

describe('docs/rules.md', () => {
  const page = readFileSync('docs/rules.md', 'utf8')
  test('says what rules and tests say: run `npm run rules-page` where it does not', () => {
    expect(page).toBe(rulesPage('.'))
  })
  test('has each rule once, none checked by laws alone', () => {
    for (const { id, version } of ALL_RULES)
      expect(page.split(`\`${id}\`, version ${version}.`), id).toHaveLength(2)
    expect(page).not.toContain('by the laws of its stage alone')
  })
})

describe('how a rule was checked', () => {
  const file = (text: string) => [{ path: 'tests/rules/control/dwell.test.ts', text }]
  const imported = "import { waveDwellRule } from '@/shared/rules/control/wave-dwell'\n"
  const another = "import { wavePreheatRule } from '@/shared/rules/control/wave-preheat'\n"
  test('is what the blocks that use it name, and nothing of the others', () => {
    const text = `${imported}${another}
describe('dwell', () => {
  // J-STD-001: so long.
  // Two lines are one.
  test('is', () => expect(waveDwellRule).toBeDefined())
  // Said of nothing outside.
})
describe('another', () => {
  // IPC-610: not of this rule.
})
`
    expect(howChecked('wave-dwell', file(text))).toEqual([
      { file: 'tests/rules/control/dwell.test.ts', sources: ['J-STD-001: so long. Two lines are one.'] },
    ])
  })
  test('is all that the file names, where it tries the rule alone or its own helpers use it', () => {
    const text = `${imported}${another}const judged = () => findingOf(waveDwellRule)
describe('dwell', () => {
  // By hand: 12 mm at 20 mm/s, computed.
})
`
    expect(howChecked('wave-dwell', file(text))[0]?.sources).toHaveLength(1)
    const alone = text.replace(another, '').replace('findingOf(waveDwellRule)', '0')
    expect(howChecked('wave-dwell', file(alone))[0]?.sources).toHaveLength(1)
  })
  test('is nothing where no test imports it', () => {
    expect(howChecked('wave-preheat', file(imported))).toEqual([])
  })
})

import type { PersonIds } from '@/seed/people'
import { Story } from '@/seed/story'

/** In the afternoon of the day on which VP-3 was opened, the invented firm writes down a rule and a value that it prefers; LX-41 keeps its own. */
export async function stateCompanyRules(people: PersonIds): Promise<void> {
  const works = new Story(people, '', '2026-11-24').later()
  const { rule } = await works.act('quill', 'state-company-rule', {
    limit: 'training-valid-most',
    value: 18,
    document: 'Handbook of our soldering',
    edition: 'edition 5',
    clause: '2.4',
    reason: 'Two of last year’s repeats came from people examined more than a year and a half before.',
  })
  await works.act('ines', 'prefer-value', {
    parameter: 'spacing-edition',
    value: 'ipc-2221',
    reason: 'Our layout checks are set up for it.',
  })
  await new Story(people, 'LX-41', '2026-11-24').later().do('quill', 'keep-own-rule', {
    rule,
    standing: 'stated',
    reason:
      'The series was soldered under the earlier rule, and everybody in it was examined within the year.',
  })
}

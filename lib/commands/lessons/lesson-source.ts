import { z } from 'zod'
import { line } from '@/lib/commands/inputs'
import type { Judged } from '@/lib/commands/signatures/load-judged'
import type { LessonSource } from '@/shared/lessons/lesson'
import { findRule } from '@/shared/catalogue/standard-plan'
import { recordInWords } from '@/shared/records/record-in-words'
import type { RecordKindKey } from '@/shared/records/record-kinds'
import { Refused } from '@/shared/refused'

export const sourceInput = z.strictObject({
  kind: z.enum(['finding', 'item', 'record'], { error: 'Say what it was learnt from.' }),
  key: line('What it was learnt from', 80),
})

/** What a lesson was learnt from, in the words of today; refused when the programme has no such thing. */
export function sourceNamed(
  { state, judgement }: Judged,
  { kind, key }: z.infer<typeof sourceInput>,
): LessonSource {
  const says = { finding: findingMessage, item: itemMessage, record: recordMessage }[kind]()
  if (says === undefined)
    throw new Refused('What it was learnt from is not in this programme any more.', {
      source: 'Choose a finding, an item or a record of this programme.',
    })
  return { kind, key, says }

  function findingMessage(): string | undefined {
    const finding = judgement.findings.get(key)
    return finding && `${findRule(key)?.title ?? key}: ${finding.found}`
  }
  function itemMessage(): string | undefined {
    return state.items.find(({ definition }) => definition.key === key)?.definition.title
  }
  function recordMessage(): string | undefined {
    for (const [recordKind, rows] of state.facts.records.byKind) {
      const row = rows.find(({ id }) => id === key)
      if (row) return recordInWords(recordKind as RecordKindKey, row)
    }
    return undefined
  }
}

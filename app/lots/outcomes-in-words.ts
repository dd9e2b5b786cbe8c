import { kindOf } from '@/shared/columns/column-kinds'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'
import type { Lot, LotTest } from '@/shared/records/lot'
import { textsOf } from '@/shared/records/readings'

/** How many specimens came to which outcome: "16 as ordered". */
export function outcomeCounts(method: TestMethod, { readings }: Pick<LotTest, 'readings'>): string {
  const column = method.columns[method.charted]
  const counts = new Map<string, number>()
  for (const outcome of textsOf(readings, method.charted)) counts.set(outcome, (counts.get(outcome) ?? 0) + 1)
  const said = (outcome: string) => (column ? kindOf(column).inSentence(column, outcome) : outcome)
  return [...counts].map(([outcome, count]) => `${count} ${said(outcome)}`).join(', ')
}

/** What the tests that count outcomes, rather than measure, came to. */
export const outcomesInWords = ({ tests }: Lot): { method: string; said: string }[] =>
  tests.flatMap((test) => {
    const method: TestMethod | undefined = ownMember(TEST_METHODS, test.method)
    return method?.columns[method.charted]?.kind === 'choice'
      ? [{ method: `${method.label}, ${test.testedOn}`, said: outcomeCounts(method, test) }]
      : []
  })

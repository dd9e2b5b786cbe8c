import type { Considered } from '@/lib/commands/considered/consider'
import { database } from '@/lib/db/client'
import { loadCompanyRules } from '@/lib/programme/company-rules'
import { speaksFor } from '@/lib/programme/works/shared-records'
import { replacedBy } from '@/shared/company-rules/rule-difference'
import type { CommandName } from '@/shared/commands/all-faces'
import {
  companyRuleTaken,
  lotChanged,
  partChanged,
  recordChanged,
  recordsAdded,
  testChanged,
  type FactsChange,
} from '@/shared/gate/changed-facts'
import type { LotTest } from '@/shared/records/lot'
import type { RecordKindKey } from '@/shared/records/record-kinds'
import { partDigest } from '@/shared/works/part-content'

type Changes<N extends CommandName> = (considered: Considered<N>) => FactsChange | Promise<FactsChange>

/** What of a programme's facts a command of the works would replace; only such commands have a preview there. */
const WHAT_IT_CHANGES = {
  'test-lot': ({ change: { test, readings } }) =>
    lotChanged(test.lotId, (lot) => ({
      ...lot,
      tests: [...lot.tests, { ...test, conditions: test.conditions as LotTest['conditions'], readings }],
    })),
  'correct-lot-test': ({ change: { subjectId, values } }) =>
    testChanged(subjectId, (test) => [{ ...test, ...(values as Partial<LotTest>) }]),
  'withdraw-lot-test': ({ change: { id } }) => testChanged(id, () => []),
  'dispose-lot': ({ change: { id, disposition } }) => lotChanged(id, (lot) => ({ ...lot, disposition })),
  'add-record':
    ({ trailId, change }) =>
    (facts) =>
      change.reduce(
        (before, { id, kind, data }) =>
          speaksFor({ kind, trailId, data }, { programmeId: '', lots: before.records.lots })
            ? recordsAdded(kind satisfies RecordKindKey, [{ ...data, id }])(before)
            : before,
        facts,
      ),
  'correct-record': ({ change: { subjectId, values } }) =>
    recordChanged(subjectId, ({ id }) => [{ ...values, id }]),
  'withdraw-record': ({ change: { id } }) => recordChanged(id, () => []),
  'revise-part': async ({ trailId, code, change: { number, values } }) => {
    const digest = partDigest(code, values)
    const approved = await database().partApproval.count({ where: { partId: trailId, digest } })
    return partChanged(code, (part) => ({
      ...part,
      revision: number,
      digest,
      approved: approved > 0,
      values: values as unknown as typeof part.values,
    }))
  },
  'approve-part': ({ code }) => partChanged(code, (part) => ({ ...part, approved: true })),
  'withdraw-part': ({ code }) => partChanged(code, (part) => ({ ...part, withdrawn: true })),
  'reinstate-part': ({ code }) => partChanged(code, (part) => ({ ...part, withdrawn: false })),
  'state-company-rule': async ({ change }) => {
    const rules = await loadCompanyRules(database(), { limit: change.limit })
    return companyRuleTaken(change, [...replacedBy(change, rules)])
  },
  'withdraw-company-rule': ({ change: { id } }) => companyRuleTaken(undefined, [id]),
} satisfies { readonly [N in CommandName]?: Changes<N> }

export type Previewed = keyof typeof WHAT_IT_CHANGES

/** The facts of a programme as they would be once the command was given. */
export const whatItChanges = <N extends Previewed>(
  name: N,
  considered: Considered<N>,
): FactsChange | Promise<FactsChange> => (WHAT_IT_CHANGES[name] as unknown as Changes<N>)(considered)

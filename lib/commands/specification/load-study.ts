import { programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { currentValues } from '@/lib/commands/specification/current-values'
import type { Transaction } from '@/lib/db/transaction'
import { hasAnswerToCite } from '@/shared/gate/action-status'
import type { ActionEntry } from '@/shared/gate/programme-state'
import {
  alternativeOf,
  type FirstAlternative,
  type OptionAlternative,
} from '@/shared/gate/option-alternative'
import { studyRevision } from '@/shared/gate/study-revision'
import { Refused } from '@/shared/refused'

/** Which study a command is about, and which writing of it the person had before them. */
export const studyNamed = {
  programme: programmeCode,
  study: wholeNumber('The study', 1, 1_000_000),
  revision: wholeNumber('The study’s revision', 1, 1_000_000),
}

/** A study that is still open, as it stands. Refused when there is none, it is decided, or it was written since it was read. */
export async function loadOpenStudy(
  tx: Transaction,
  programmeId: string,
  { study: number, revision }: { readonly study: number; readonly revision: number },
) {
  const row = await tx.optionStudy.findUnique({ where: { programmeId_number: { programmeId, number } } })
  if (!row) throw new Refused('There is no such study in this programme.')
  if (row.adopted) throw new Refused(`Study ${row.number} is decided: “${row.adopted}” was adopted.`)
  const alternatives = (row.alternatives as unknown as (OptionAlternative | FirstAlternative)[]).map(
    alternativeOf,
  )
  if (studyRevision(alternatives) !== revision)
    throw new Refused(
      'The study was revised since you read it. What you typed is still here; open the study beside it, read what changed, and send this again.',
      { revision: String(studyRevision(alternatives)) },
    )
  return { ...row, alternatives }
}

/** The values that stand, and the numbers of the actions whose answers may be rested on. */
export async function loadStudyGround(tx: Transaction, programmeId: string) {
  const current = await currentValues(tx, programmeId)
  const actions = await tx.action.findMany({
    where: { programmeId, answeredAt: { not: null } },
    select: { number: true, outcome: true },
  })
  const answered = actions.filter(({ outcome }) =>
    hasAnswerToCite({ answer: ANY_ANSWER, outcome: outcome as ActionEntry['outcome'] }),
  )
  return {
    current,
    today: new Map([...current].map(([parameter, { value }]) => [parameter, value])),
    answered: new Set(answered.map(({ number }) => number)),
  }
}

const ANY_ANSWER = { feasible: 'not asked', amounts: [], comment: '' } as const

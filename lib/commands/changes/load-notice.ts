import type { Context } from '@/lib/commands/command'
import { loadJudged } from '@/lib/commands/signatures/load-judged'
import type { Transaction } from '@/lib/db/transaction'
import { loadChangeNotices } from '@/lib/programme/change-notices'
import { noticeStanding, type ChangeNotice } from '@/shared/gate/change-notice'
import { noticeEffect } from '@/shared/gate/notice-effect'
import { Refused } from '@/shared/refused'

export async function loadNotice(
  tx: Transaction,
  { programmeId }: Context,
  number: number,
): Promise<ChangeNotice> {
  const [notice] = await loadChangeNotices(tx, programmeId, number)
  if (!notice) throw new Refused('There is no such change notice in this programme.')
  return notice
}

/** A notice with what it would do to the programme, read and judged inside the transaction. */
export async function loadNoticeStanding(tx: Transaction, context: Context, number: number) {
  const notice = await loadNotice(tx, context, number)
  const { state, judgement } = await loadJudged(tx, context)
  return {
    notice,
    state,
    standing: noticeStanding(notice, state, noticeEffect(state, judgement, notice.changes)),
  }
}

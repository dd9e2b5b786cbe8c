import type { Context } from '@/lib/commands/command'
import type { Transaction } from '@/lib/db/transaction'
import { judgeAndLog } from '@/lib/programme/judge-and-log'
import { loadState } from '@/lib/programme/load-state'
import { itemStateFor, type Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import type { ItemState } from '@/shared/gate/item-status'
import { Refused } from '@/shared/refused'

export interface Judged {
  readonly state: ProgrammeState
  readonly judgement: Judgement
}

/** The whole programme, read and judged inside the transaction: nobody signs on a remembered result. */
export async function loadJudged(tx: Transaction, { programmeId, today }: Context): Promise<Judged> {
  const state = await loadState(tx, programmeId, today)
  return { state, judgement: judgeAndLog(state) }
}

export function itemNamed({ judgement }: Judged, key: string): ItemState {
  const item = itemStateFor(judgement, key)
  if (!item) throw new Refused('The plan of this programme has no such item.')
  return item
}

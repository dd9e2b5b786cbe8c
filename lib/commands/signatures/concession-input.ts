import { wholeNumber } from '@/lib/commands/inputs'
import type { Transaction } from '@/lib/db/transaction'
import { calendarDate } from '@/shared/columns/calendar-date'
import { Refused } from '@/shared/refused'

/** For how many boards, and until which day. */
export const boundsInput = {
  quantity: wholeNumber('The number of boards', 1, 100_000_000).nullable(),
  untilOn: calendarDate('The last day').nullable(),
} as const

interface Bounds {
  readonly quantity: number | null
  readonly untilOn: string | null
}

/** Permission to depart is for a number, or until a day that is still to come. */
export function refuseUnbounded({ quantity, untilOn }: Bounds, today: string): void {
  if (quantity === null && untilOn === null)
    throw new Refused('Say for how many boards, or until which day.', {
      quantity: 'Give a number, or a last day.',
    })
  if (untilOn !== null && untilOn < today)
    throw new Refused('The last day has passed already.', {
      untilOn: 'Choose a day that is still to come.',
    })
}

/** The number of the newest concession or deviation permit; 0 where there is none. */
export const newestConcession = async (tx: Transaction, programmeId: string): Promise<number> =>
  (await tx.concession.aggregate({ where: { programmeId }, _max: { number: true } }))._max.number ?? 0

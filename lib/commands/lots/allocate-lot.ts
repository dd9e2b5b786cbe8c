import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, programmeCode, wholeNumber, worksCode } from '@/lib/commands/inputs'
import { loadLot } from '@/lib/commands/lots/load-lot'
import { lotsOfPart } from '@/lib/programme/works/store-of-lots'
import { isUsable, lotName } from '@/shared/records/lot-identity'
import { Refused } from '@/shared/refused'
import { isExpired, leftInStore, toUseFirst, type LotInStore } from '@/shared/storage/order-of-use'

/** Sets pieces of a lot aside for a programme, which reads the lot's tests from then on. */
export const allocateLot = defineCommand({
  name: 'allocate-lot',
  input: z.strictObject({
    supplier: worksCode('The supplier'),
    lot: line('The lot', 40),
    to: programmeCode,
    quantity: wholeNumber('The quantity', 1, 100_000_000),
    /** Why it is taken although another lot of the part should be used first, or its last day is past. */
    outOfOrder: optionalLine('The reason', 1000),
  }),
  async load(tx, { lot: code, to }, { trailId }) {
    const { id, part } = await loadLot(tx, trailId, code)
    return {
      id,
      lots: await lotsOfPart(tx, part),
      programme: await tx.programme.findUnique({ where: { code: to }, select: { id: true, code: true } }),
    }
  },
  decide({ id, lots, programme }, { to, quantity, outOfOrder }, { newId, today, subject }) {
    const lot = lots.find((one) => one.id === id)
    if (!lot) throw new Error('A lot is among those of its part.')
    if (!programme) throw new Refused(`There is no programme ${to}.`, { to: 'Choose a programme.' })
    if (!isUsable(lot)) throw new Refused(`Lot ${lot.code} is rejected. No programme may have it.`)
    const left = leftInStore(lot)
    if (quantity > left)
      throw new Refused(
        left === 0 ? `Nothing is left of lot ${lot.code}.` : `Of lot ${lot.code}, ${left} are left in store.`,
        { quantity: `At most ${left}.` },
      )
    if (outOfOrder === '') refuseOutOfOrder(lot, lots, today)
    const row = {
      id: newId(),
      lotId: lot.id,
      programmeId: programme.id,
      quantity,
      outOfOrder: outOfOrder || null,
    }
    return {
      change: row,
      record: { ...row, atSupplier: subject.code, lot: lot.code, part: lot.part, to: programme.code },
      result: { supplier: subject.code, lot: lot.code, allocation: row.id },
    }
  },
  async apply(tx, row, { trailId, actor, now }) {
    await tx.lotAllocation.create({ data: { ...row, trailId, allocatedById: actor.personId, at: now } })
  },
})

/** What expires first, or came first, is used first, unless somebody says why not. */
function refuseOutOfOrder(lot: LotInStore, store: readonly LotInStore[], today: string): void {
  const saysWhy = { outOfOrder: 'Say why this lot is taken all the same.' }
  if (isExpired(lot, today))
    throw new Refused(
      `Lot ${lot.code} was to be used by ${lot.expiresOn}. Say why it is taken all the same.`,
      saysWhy,
    )
  const first = toUseFirst(lot, store, today)
  if (!first) return
  const because =
    first.expiresOn !== null && first.expiresOn !== lot.expiresOn
      ? `is to be used by ${first.expiresOn}`
      : `was received on ${first.receivedOn}`
  throw new Refused(
    `Use ${lotName(first)} from ${first.supplier} first: it ${because}, and ${leftInStore(first)} of it are left. Or say why this lot is taken all the same.`,
    saysWhy,
  )
}

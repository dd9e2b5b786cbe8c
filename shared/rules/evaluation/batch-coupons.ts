import { commonPractice } from '@/shared/sources/provenance'
import type { Lot, LotTest } from '@/shared/records/lot'
import { isUsable, lotName, partKey, aboutLot } from '@/shared/records/lot-identity'
import { isSolderabilityMethod } from '@/shared/methods/test-methods'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { rule } from '@/shared/rules/rule'
import { demandsFrom, standingReads } from '@/shared/sampling/sampling-reads'
import { whySetAside, type TestDemands } from '@/shared/sampling/test-status'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { count } from '@/shared/rules/measure'
import { groupedBy } from '@/shared/grouped-by'

const SOURCE = commonPractice('A coupon or test board in every production batch of boards')
const LIMIT_SAYS =
  'a coupon of the same batch (supplier and date code), or a board of the lot itself, tested for solderability'

export const batchCoupons = rule({
  id: 'batch-coupons',
  title: 'A coupon or test board in each batch',
  why: 'Every plating batch is its own: a coupon of last month’s batch says nothing about this one, and a finished board is dear to spend on a test.',
  stage: 'evaluation',
  version: 2,
  reads: standingReads,
  judge(inputs): Judged {
    const boards = inputs.lots.filter((lot) => lot.kind === 'bare board' && isUsable(lot))
    if (boards.length === 0) {
      return undetermined(
        'No lot of bare boards is recorded yet.',
        ['a lot of bare boards, and the coupons of its batch'],
        LIMIT_SAYS,
      )
    }
    const coupons = couponsByBatch(inputs.lots)
    const demands = demandsFrom(inputs)
    const parts = boards.map((lot) => partOf(lot, coupons.get(batchKey(lot)) ?? [], demands))
    const spoken = spokenByWorst(parts)
    return {
      ...spoken,
      found:
        spoken.verdict === 'meets'
          ? `Every batch of boards (${boards.length}) has a tested coupon or board.`
          : spoken.found,
      measured: { lots: count(boards.length) },
      limit: LIMIT_SAYS,
      working: [
        {
          label: 'Batches covered',
          formula: 'coupon lot of the same supplier and date code, or a test on the lot itself',
          numbers: `${parts.filter(({ verdict }) => verdict === 'meets').length} of ${boards.length} batches`,
          result: spoken.verdict,
        },
      ],
      sources: [SOURCE],
    }
  },
})

/** A code without a figure ("not stated", "none") names no batch. */
const namesBatch = ({ dateCode }: Lot): boolean => /\d/.test(dateCode)
const batchKey = ({ supplier, dateCode }: Lot): string => `${partKey(supplier)}\n${partKey(dateCode)}`

const couponsByBatch = (lots: readonly Lot[]): ReadonlyMap<string, readonly Lot[]> =>
  groupedBy(
    lots.filter((lot) => lot.kind === 'coupon' && isUsable(lot) && namesBatch(lot)),
    batchKey,
  )

function partOf(board: Lot, coupons: readonly Lot[], demands: TestDemands): Part {
  const common = { subject: lotName(board), about: aboutLot(board) }
  const counts = (test: LotTest) =>
    isSolderabilityMethod(test.method) && whySetAside(test, demands) === undefined
  if (board.tests.some(counts)) {
    return { ...common, verdict: 'meets', found: 'a board of the lot itself was tested.' }
  }
  const tested = coupons.find((coupon) => coupon.tests.some(counts))
  if (tested) {
    return {
      ...common,
      verdict: 'meets',
      measured: { coupon: tested.code, dateCode: board.dateCode },
      found: `coupon lot ${tested.code} of date code ${board.dateCode} was tested.`,
    }
  }
  const [waiting] = coupons
  if (waiting) {
    return {
      ...common,
      verdict: 'undetermined',
      found: `coupon lot ${waiting.code} of its batch has no solderability test that counts.`,
      remedy: { says: `Test coupon lot ${waiting.code}.` },
    }
  }
  return {
    ...common,
    verdict: 'undetermined',
    found: `no coupon of ${board.supplier}, date code ${board.dateCode}, and no board of the lot was tested for solderability.`,
    remedy: { says: 'Ask for coupons of the batch, or spend a board of the lot on the test.' },
  }
}

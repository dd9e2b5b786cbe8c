import { commonPractice } from '@/shared/sources/provenance'
import type { Lot } from '@/shared/records/lot'
import { isUsable, lotName, partKey, aboutLot } from '@/shared/records/lot-identity'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { lots } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'
import {
  passingReads,
  solderabilityResults,
  type SolderabilityResult,
} from '@/shared/lot-tests/solderability-results'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { count } from '@/shared/rules/measure'
import { groupedBy } from '@/shared/grouped-by'

const SOURCE = commonPractice('A coupon or test board in every production batch of boards')
const LIMIT_SAYS =
  'a coupon of the same batch (supplier and date code), or a board of the lot itself, tested for solderability and passed'

export const batchCoupons = rule({
  id: 'batch-coupons',
  title: 'A coupon or test board in each batch',
  why: 'Every plating batch is its own: a coupon of last month’s batch says nothing about this one, and a finished board is dear to spend on a test.',
  formula: 'each batch of boards has a coupon of its supplier and date code, or a test of its own',
  stage: 'evaluation',
  version: 5,
  reads: { ...passingReads, lots },
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
    const newest: NewestOf = (lot) => solderabilityResults(lot, inputs).at(-1)
    const parts = boards.map((lot) => partOf(lot, coupons.get(batchKey(lot)) ?? [], newest))
    const spoken = spokenByWorst(parts)
    return {
      ...spoken,
      found:
        spoken.verdict === 'meets'
          ? `Every batch of boards (${boards.length}) has a coupon or board that passed its test.`
          : spoken.found,
      measured: { lots: count(boards.length) },
      limit: LIMIT_SAYS,
      working: [
        {
          label: 'Batches covered',
          formula: 'coupon lot of the same supplier and date code, or a test passed by the lot itself',
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

/** The newest solderability result of a lot that counts. */
type NewestOf = (lot: Lot) => SolderabilityResult | undefined

function partOf(board: Lot, coupons: readonly Lot[], newestOf: NewestOf): Part {
  const common = { subject: lotName(board), about: aboutLot(board) }
  const tested = [board, ...coupons].flatMap((lot) => {
    const newest = newestOf(lot)
    return newest ? [{ lot, ...newest }] : []
  })
  const failed = tested.find(({ passed }) => !passed)
  if (failed) {
    const what = failed.lot === board ? 'the lot itself' : `coupon lot ${failed.lot.code} of its batch`
    return {
      ...common,
      verdict: 'fails',
      measured: { failed: failed.lot.code, testedOn: failed.restsOn },
      found: `${what} failed its newest solderability test, of ${failed.restsOn}.`,
      remedy: { message: 'Reject the batch, or find why it failed and test again.' },
    }
  }
  const [good] = tested
  if (good) {
    return {
      ...common,
      verdict: 'meets',
      measured: { tested: good.lot.code, dateCode: board.dateCode },
      found:
        good.lot === board
          ? 'a board of the lot itself was tested and passed.'
          : `coupon lot ${good.lot.code} of date code ${board.dateCode} was tested and passed.`,
    }
  }
  const [waiting] = coupons
  if (waiting) {
    return {
      ...common,
      verdict: 'undetermined',
      found: `coupon lot ${waiting.code} of its batch has no solderability test that counts.`,
      remedy: { message: `Test coupon lot ${waiting.code}.` },
    }
  }
  return {
    ...common,
    verdict: 'undetermined',
    found: `no coupon of ${board.supplier}, date code ${board.dateCode}, and no board of the lot was tested for solderability.`,
    remedy: { message: 'Ask for coupons of the batch, or spend a board of the lot on the test.' },
  }
}

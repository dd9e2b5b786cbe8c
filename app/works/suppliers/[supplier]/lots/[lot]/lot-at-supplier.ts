import { worksLotAddress } from '@/app/addresses'
import type { LotAt } from '@/app/lots/lot-at'
import type { WorksLotRead } from '@/lib/queries/works/works-lot'
import { dateAtWorks } from '@/lib/settings/works'
import type { Actor } from '@/shared/actor'
import { conditionsToStartFrom } from '@/shared/lot-tests/conditions-to-start-from'
import { testWorksLot } from './actions'

/** A lot of the works; a test starts with the conditions of the programmes that hold some of it. */
export const lotAtSupplier = ({ supplier, lot, judged, instruments }: WorksLotRead, actor: Actor): LotAt => ({
  names: { 'works.kind': 'supplier', 'works.code': supplier.code },
  address: worksLotAddress(supplier.code, lot.code),
  actor,
  today: dateAtWorks(new Date()),
  instruments,
  starts: (of, method) =>
    judged.flatMap(({ state: { programme, facts } }) =>
      conditionsToStartFrom(facts, of, method).map((start) => ({
        ...start,
        message: [programme.code, start.message].filter(Boolean).join(', '),
      })),
    ),
  testLot: testWorksLot,
})

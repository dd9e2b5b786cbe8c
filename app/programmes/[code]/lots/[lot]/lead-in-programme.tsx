import { lotAddress, worksLotAddress } from '@/app/addresses'
import { AskAboutLot } from '@/app/lots/ask-about-lot'
import { LotLead } from '@/app/lots/lot-lead'
import { stripsOfLot } from '@/app/lots/strips-of-lot'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import type { Lot } from '@/shared/records/lot'
import { earlierDeliveries } from '@/shared/records/lot-identity'

/** What leads a lot's page in a programme: its readings against the programme's own limits. */
export function LeadInProgramme({ view, lot }: { view: ProgrammeView; lot: Lot }) {
  const { facts } = view.state
  const { lots, deliveries } = facts.records
  const earlier = earlierDeliveries(lot, [...lots, ...deliveries])
  const refused = refusal('test-lot', view.actor)
  const { atWorks } = lot
  return (
    <LotLead
      lot={lot}
      held={[{ by: '', strips: stripsOfLot(lot, earlier, facts) }]}
      addressOf={(before) =>
        before.inStore
          ? worksLotAddress(before.inStore.supplier, before.inStore.lot)
          : lots.includes(before)
            ? lotAddress(view.code, before.code)
            : undefined
      }
      test={
        refused
          ? { refused }
          : { href: `${atWorks ? worksLotAddress(atWorks.supplier, atWorks.lot) : ''}#test` }
      }
    >
      <AskAboutLot view={view} lot={lot} />
    </LotLead>
  )
}

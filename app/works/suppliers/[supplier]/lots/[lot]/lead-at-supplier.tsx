import { worksLotAddress } from '@/app/addresses'
import { AskAboutLot } from '@/app/lots/ask-about-lot'
import { LotLead, type HeldStrips } from '@/app/lots/lot-lead'
import { stripsOfLot } from '@/app/lots/strips-of-lot'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { WorksLotRead } from '@/lib/queries/works/works-lot'
import { dateAtWorks } from '@/lib/settings/works'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { NO_RECORDS } from '@/shared/records/programme-records'
import type { Facts } from '@/shared/rules/facts'

interface LeadAtSupplierProps {
  readonly read: WorksLotRead
  readonly actor: Actor
  /** Programmes that hold or used some of it, as far as this person may read them. */
  readonly views: readonly ProgrammeView[]
}

/** What leads a lot's page at its supplier: its readings against the limits of the programmes that hold some of it. */
export function LeadAtSupplier({ read, actor, views }: LeadAtSupplierProps) {
  const { lot, supplier } = read
  const refused = refusal('test-lot', actor)
  return (
    <LotLead
      lot={lot}
      held={heldStrips(read)}
      addressOf={(before) => worksLotAddress(supplier.code, before.code)}
      test={refused ? { refused } : { href: '#test' }}
    >
      {views.map((view) => {
        const own = view.state.facts.records.lots.find(({ id }) => id === lot.id)
        return own && <AskAboutLot key={view.code} view={view} lot={own} named={views.length > 1} />
      })}
    </LotLead>
  )
}

/** Once for programmes that hold it to the same; while none holds some, by the limits that stand where nobody states another. */
function heldStrips({ lot, earlier, judged }: WorksLotRead): HeldStrips[] {
  if (judged.length === 0)
    return [{ by: '', strips: stripsOfLot(lot, earlier, nothingStated(dateAtWorks(new Date()))) }]
  const byStrips = new Map<string, { strips: HeldStrips['strips']; programmes: string[] }>()
  for (const { state } of judged) {
    const strips = stripsOfLot(lot, earlier, state.facts)
    const key = JSON.stringify(
      strips.map(({ title, limits, from, own, bound }) => [title, limits, from, own.counted.length, bound]),
    )
    const held = byStrips.get(key) ?? { strips, programmes: [] }
    byStrips.set(key, { strips, programmes: [...held.programmes, state.programme.code] })
  }
  return [...byStrips.values()].map(({ strips, programmes }) => ({
    by: byStrips.size > 1 ? `As ${programmes.join(', ')} holds it` : '',
    strips,
  }))
}

const nothingStated = (today: string): Facts => ({
  values: new Map(),
  requirements: [],
  records: NO_RECORDS,
  today,
})

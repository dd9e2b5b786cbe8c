import { addressPart } from '@/app/address-part'
import { newItemAddress, printAddress, routeCardAddress, summaryAddress, tableAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { statusOf } from '@/app/programmes/status'
import { TakeTable } from '@/app/ui/take-table'
import { ButtonLink } from '@/app/ui/button'
import { refusal } from '@/shared/policy'
import { RouteCard } from './route-card'

interface RouteCardPageProps {
  params: Promise<{ code: string }>
}

export async function generateMetadata({ params }: RouteCardPageProps) {
  return { title: `${addressPart((await params).code)} – Liquidus` }
}

/** A programme on one sheet: the four stages, what stands in them, and their gates. */
export default async function RouteCardPage({ params }: RouteCardPageProps) {
  const { code } = await params
  const visit = await visitProgramme(code)
  const { view } = visit
  const programme = view.state.programme
  const lead = view.state.members.find(({ personId }) => personId === programme.leadId)
  return (
    <ProgrammeSheet
      visit={visit}
      code={view.code}
      at={routeCardAddress(view.code)}
      title={programme.title}
      supplement="Route card"
      cells={[
        { label: 'Programme', value: programme.code },
        { label: 'Lead', value: lead?.name ?? '' },
        { label: 'Status', value: statusOf(view.judgement) },
      ]}
    >
      {(readable) => (
        <>
          <RouteCard view={readable} />
          <TakeTable address={tableAddress(readable.code, 'findings')} what="All findings" />
          <p className="form-actions">
            <ButtonLink href={printAddress(readable.code)}>Print pack: the programme in full</ButtonLink>{' '}
            <a href={summaryAddress(readable.code)}>Summary on two sheets</a>
            {!refusal('add-item', readable.actor) && (
              <ButtonLink href={newItemAddress(readable.code)}>Add an item to the plan</ButtonLink>
            )}
          </p>
        </>
      )}
    </ProgrammeSheet>
  )
}

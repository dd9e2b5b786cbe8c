import {
  newItemAddress,
  newProgrammeAddress,
  printAddress,
  routeCardAddress,
  specificationAddress,
  summaryAddress,
  tableAddress,
} from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { statusOf } from '@/app/programmes/status'
import { TakeTable } from '@/app/ui/take-table'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { countRuleDifferences } from '@/lib/queries/company-rules'
import { refusal } from '@/shared/policy'
import { counted } from '@/shared/quantity/counted'
import { BeginHere } from './begin-here'
import { RouteCard } from './route-card'

export const generateMetadata = programmeTitle(({ code }) => `${code}`)

/** A programme on one sheet: the four stages, what stands in them, and their gates. */
export default programmePage(async ({ visit }) => {
  const { view } = visit
  const programme = view.state.programme
  const differing = await countRuleDifferences(view.state)
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
          <BeginHere view={readable} />
          {differing > 0 && (
            <Notice kind="info">
              <a href={`${specificationAddress(readable.code)}#company-rules`}>
                {counted(differing, 'company rule or preferred value', 'company rules and preferred values')}{' '}
                of today to decide on
              </a>
            </Notice>
          )}
          <RouteCard view={readable} />
          <TakeTable address={tableAddress(readable.code, 'findings')} what="All findings" />
          <TakeTable address={tableAddress(readable.code, 'evidence')} what="All evidence" />
          <TakeTable address={tableAddress(readable.code, 'approvals')} what="All approvals" />
          <TakeTable address={tableAddress(readable.code, 'gate-signatures')} what="All gate signatures" />
          <p className="form-actions">
            <ButtonLink href={printAddress(readable.code)}>Print pack: the programme in full</ButtonLink>{' '}
            <a href={summaryAddress(readable.code)}>Summary on two sheets</a>
            {!refusal('open-programme', readable.actor) && (
              <a href={newProgrammeAddress(readable.code)}>Open another programme from this one</a>
            )}
            {!refusal('add-item', readable.actor) && (
              <ButtonLink href={newItemAddress(readable.code)}>Add an item to the plan</ButtonLink>
            )}
          </p>
        </>
      )}
    </ProgrammeSheet>
  )
})

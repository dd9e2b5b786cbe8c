import { printAddress, routeCardAddress, summaryAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { statusOf } from '@/app/programmes/status'
import { Digest } from '@/app/ui/digest'
import { Moment } from '@/app/ui/date'
import { readNonconformities } from '@/lib/queries/nonconformities'
import { readOptionStudies } from '@/lib/queries/option-studies'
import { readMinutes } from '@/lib/queries/reviews'
import { Pack } from './pack'
import { PrintButton } from './print-button'

export const generateMetadata = programmeTitle(({ code }) => `${code}, print pack`)

/** The programme as one document for paper, as of the newest entry of its trail. */
export default programmePage(async ({ visit }) => {
  const { view } = visit
  const code = view.code
  const lead = view.state.members.find(({ personId }) => personId === view.state.programme.leadId)
  const { id } = view.state.programme
  const [studies, reviews, nonconformities] = await Promise.all([
    readOptionStudies(id),
    readMinutes(id),
    readNonconformities(id),
  ])
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={routeCardAddress(code)}
      place={[{ text: 'Print pack', href: printAddress(code) }]}
      title={view.state.programme.title}
      supplement="The programme in full"
      cells={[
        { label: 'Programme', value: code },
        { label: 'Lead', value: lead?.name ?? '' },
        { label: 'Status', value: statusOf(view.judgement) },
        { label: 'As of', value: <Moment at={new Date()} /> },
        { label: 'Printed for', value: visit.person.name },
        { label: 'Newest hash', value: <Digest value={view.head.hash} length={24} />, wide: true },
      ]}
    >
      {(readable) => (
        <>
          <PrintButton />
          <p className="print-hidden">
            <a href={summaryAddress(code)}>Summary on two sheets: decisions, exceptions, signatures</a>
          </p>
          <Pack
            view={readable}
            studies={[...studies].reverse()}
            reviews={reviews}
            nonconformities={[...nonconformities].reverse()}
          />
        </>
      )}
    </ProgrammeSheet>
  )
})

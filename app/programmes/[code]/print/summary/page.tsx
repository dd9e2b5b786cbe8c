import { printAddress, routeCardAddress, summaryAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { statusOf } from '@/app/programmes/status'
import { Moment } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { readOptionStudies } from '@/lib/queries/option-studies'
import { PrintButton } from '../print-button'
import { DecisionsSummed } from './decisions-summed'
import { ExceptionsSummed } from './exceptions-summed'
import { SignaturesSummed } from './signatures-summed'

export const generateMetadata = programmeTitle(({ code }) => `${code}, summary`)

/** The programme on two sheets of A4: what was decided, what is let pass, who signed. */
export default programmePage(async ({ visit }) => {
  const { view } = visit
  const { programme, members } = view.state
  const studies = await readOptionStudies(programme.id)
  return (
    <ProgrammeSheet
      visit={visit}
      code={view.code}
      at={routeCardAddress(view.code)}
      place={[
        { text: 'Print pack', href: printAddress(view.code) },
        { text: 'Summary', href: summaryAddress(view.code) },
      ]}
      title={programme.title}
      supplement="Decisions, exceptions, signatures"
      cells={[
        { label: 'Programme', value: view.code },
        { label: 'Lead', value: members.find(({ personId }) => personId === programme.leadId)?.name ?? '' },
        { label: 'Status', value: statusOf(view.judgement) },
        { label: 'As of', value: <Moment at={new Date()} /> },
        { label: 'Entries in the trail', value: view.head.seq },
        { label: 'Newest hash', value: <Digest value={view.head.hash} length={24} />, wide: true },
      ]}
    >
      {(readable) => (
        <div className="part-body print-summary">
          <PrintButton />
          <SignaturesSummed view={readable} />
          <ExceptionsSummed view={readable} />
          <DecisionsSummed view={readable} studies={studies} />
        </div>
      )}
    </ProgrammeSheet>
  )
})

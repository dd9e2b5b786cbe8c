import { changeNoticesAddress, tableAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { Section } from '@/app/ui/section'
import { TakeTable } from '@/app/ui/take-table'
import { readChangeNotices } from '@/lib/queries/change-notices'
import { refusal } from '@/shared/policy'
import { NoticeTable } from './notice-table'
import { OpenNotice } from './open-notice'

export const generateMetadata = programmeTitle(({ code }) => `Change notices, ${code}`)

/** Changes that are decided together: the open notices first, and what became of the others. */
export default programmePage(async ({ visit, code }) => {
  const notices = await readChangeNotices(visit.view.state.programme.id)
  const open = notices.filter(({ disposition }) => !disposition)
  const closed = notices.filter(({ disposition }) => disposition)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={changeNoticesAddress(code)}
      place={[{ text: 'Changes' }]}
      title="Change notices"
      supplement="Several changes seen, answered and adopted as one"
      cells={[
        { label: 'Open', value: open.length },
        { label: 'Closed', value: closed.length },
      ]}
    >
      {(view) => (
        <>
          {notices.length === 0 && (
            <Empty title="No change notices yet">
              A notice collects new values and limits of a programme that is signed already, shows what they
              do together, and is adopted once every department agrees.
              <FirstStep
                first="First open one, with its reason."
                refused={refusal('open-change-notice', view.actor)}
              />
            </Empty>
          )}
          {open.length > 0 && (
            <Section heading="Open">
              <NoticeTable code={view.code} caption="Open change notices" notices={open} />
            </Section>
          )}
          {!refusal('open-change-notice', view.actor) && <OpenNotice code={view.code} />}
          {closed.length > 0 && (
            <Section heading="Closed">
              <NoticeTable code={view.code} caption="Closed change notices" notices={closed} />
            </Section>
          )}
          {notices.length > 0 && (
            <>
              <TakeTable address={tableAddress(code, 'change-notices')} what="All change notices" />
              <TakeTable address={tableAddress(code, 'change-answers')} what="Answers to change notices" />
            </>
          )}
        </>
      )}
    </ProgrammeSheet>
  )
})

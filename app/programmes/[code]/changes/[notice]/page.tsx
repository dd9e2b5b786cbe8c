import { notFound } from 'next/navigation'
import { changeNoticesAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { readChangeNotice } from '@/lib/queries/change-notices'
import { noticeStanding } from '@/shared/gate/change-notice'
import { noticeEffect } from '@/shared/gate/notice-effect'
import { AmendCost } from './amend-cost'
import { Answers } from './answers'
import { ChangesProposed } from './changes-proposed'
import { DispositionPart } from './disposition-part'
import { Effect } from './effect'
import { PutIn } from './put-in'

export const generateMetadata = programmeTitle<{ notice: string }>(
  ({ code, notice }) => `Change notice ${notice}, ${code}`,
)

/** One change notice: what it changes, what that would do, what each department says, and what became of it. */
export default programmePage<{ notice: string }, { revise?: string; limit?: string }>(
  async ({ visit, code, params: { notice: number }, searchParams: wanted }) => {
    const { state, judgement } = visit.view
    const notice = await readChangeNotice(state.programme.id, number)
    if (!notice) notFound()
    const effect = noticeEffect(state, judgement, notice.disposition ? [] : notice.changes)
    const standing = noticeStanding(notice, state, effect)
    const open = notice.disposition === null
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={changeNoticesAddress(code)}
        place={[{ text: 'Changes', href: changeNoticesAddress(code) }, { text: `Notice ${number}` }]}
        title={notice.title}
        supplement={`Change notice ${number}: ${notice.reason}`}
        cells={[
          { label: 'Opened by', value: notice.openedByName },
          { label: 'On', value: <Day at={notice.openedAt} /> },
          { label: 'Disposition', value: notice.disposition?.kind ?? 'open' },
          ...(open ? [{ label: 'Content hash', value: <Digest value={standing.digest} length={12} /> }] : []),
        ]}
      >
        {(view) => (
          <>
            <ChangesProposed view={view} standing={standing} />
            {open && notice.changes.length > 0 && <Effect notice={notice} effect={effect} />}
            {open && <AmendCost view={view} notice={notice} />}
            {open && <PutIn view={view} notice={notice} wanted={wanted} />}
            <Answers view={view} standing={standing} />
            <DispositionPart view={view} standing={standing} />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)

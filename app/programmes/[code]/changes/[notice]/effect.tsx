import { Facts } from '@/app/ui/facts'
import { Section } from '@/app/ui/section'
import type { ChangeNotice } from '@/shared/gate/change-notice'
import type { NoticeEffect } from '@/shared/gate/notice-effect'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { WhatWouldChange } from '../../items/[item]/what-would-change'

/** What all its changes would do together. */
export function Effect({
  notice,
  effect: { preview, lapsing, lots },
}: {
  notice: ChangeNotice
  effect: NoticeEffect
}) {
  const confirmable = lapsing.filter(({ again }) => again === undefined)
  return (
    <Section
      id="effect"
      heading="If it is adopted"
      lead="Judged on the programme as it stands today; nothing is stored."
    >
      <WhatWouldChange
        turned={preview.turned}
        moved={preview.moved}
        reach={preview}
        revived={preview.revived}
      />
      {lapsing.length > 0 && (
        <details className="disclosure">
          <summary>
            {confirmable.length} of {lapsing.length} approvals could be confirmed, the others must be given
            again
          </summary>
          <ul>
            {lapsing.map(({ itemKey, item, department, personName, again }) => (
              <li key={`${itemKey} ${department}`}>
                {item}, {DEPARTMENT_NAMES[department as Department]} ({personName}):{' '}
                {again ? `again. ${again}` : 'to be confirmed.'}
              </li>
            ))}
          </ul>
        </details>
      )}
      <Facts
        facts={[
          {
            label: 'Lots concerned',
            value: lots.length > 0 ? lots.join(', ') : 'none named by these findings',
          },
          { label: 'Cost per board', value: notice.costPerBoard ?? 'unknown' },
          { label: 'Cost once', value: notice.costOnce ?? 'unknown' },
        ]}
      />
    </Section>
  )
}

import { changeNoticeAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ChangeNotice } from '@/shared/gate/change-notice'

interface NoticeTableProps {
  code: string
  caption: string
  notices: readonly ChangeNotice[]
}

export function NoticeTable({ code, caption, notices }: NoticeTableProps) {
  return (
    <RuledTable
      caption={caption}
      captionHidden
      rows={notices}
      rowKey={({ number }) => number}
      columns={[
        { label: 'No.', set: 'shrink', cell: ({ number }) => number },
        {
          label: 'Notice',
          names: true,
          cell: ({ number, title }) => <a href={changeNoticeAddress(code, number)}>{title}</a>,
        },
        { label: 'Changes', set: 'number', cell: ({ changes }) => changes.length },
        {
          label: 'Opened',
          cell: ({ openedByName, openedAt }) => (
            <>
              {openedByName}, <Day at={openedAt} />
            </>
          ),
        },
        { label: 'Disposition', cell: ({ disposition }) => disposition?.kind ?? 'open' },
      ]}
    />
  )
}

import { routeCardAddress } from '@/app/addresses'
import { placeAddress } from '@/app/place-address'
import { Day } from '@/app/ui/date'
import { DepartmentTag } from '@/app/ui/department-tag'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import type { DeskLine } from '@/lib/queries/desk'
import { AWAITED, TO_DO } from '@/shared/desk/desk-words'

/** Lines of a desk, each leading to where it is done; `waits` says whose move it is. */
export function DeskTable({
  caption,
  lines,
  today,
  waits = false,
}: {
  caption: string
  lines: readonly DeskLine[]
  today: string
  waits?: boolean
}) {
  const dated = lines.some(({ dueOn }) => dueOn !== null)
  return (
    <RuledTable
      caption={caption}
      captionHidden
      rows={lines}
      rowKey={({ code, verb }, position) => `${code} ${verb} ${position}`}
      columns={[
        { label: 'What', names: true, cell: what },
        waits
          ? {
              label: 'Waits for',
              set: 'shrink',
              cell: ({ waitsFor, verb }) => `${waitsFor}: ${AWAITED[verb]}`,
            }
          : { label: 'To do', set: 'shrink', cell: ({ verb }) => TO_DO[verb] },
        PROGRAMME,
        { label: 'For', set: 'shrink', cell: ({ department }) => <DepartmentTag department={department} /> },
        ...(dated ? [due(today)] : []),
      ]}
    />
  )
}

const MOST_NAMED = 4

const what = ({ code, place, message, several = [] }: DeskLine) => (
  <>
    <a href={placeAddress(code, place)}>{message}</a>
    {several.length > 0 && (
      <span className="faint">
        {' '}
        {several.slice(0, MOST_NAMED).join(', ')}
        {several.length > MOST_NAMED && ` and ${several.length - MOST_NAMED} more`}
      </span>
    )}
  </>
)

const PROGRAMME: Column<DeskLine> = {
  label: 'Programme',
  set: 'shrink',
  cell: ({ code, programme }) => (
    <a href={routeCardAddress(code)} title={programme}>
      {code}
    </a>
  ),
}

const due = (today: string): Column<DeskLine> => ({
  label: 'Due',
  set: 'shrink',
  cell: ({ dueOn }) =>
    dueOn ? (
      <>
        <Day at={dueOn} />
        {dueOn < today && <strong> overdue</strong>}
      </>
    ) : (
      <span className="faint">no date</span>
    ),
})

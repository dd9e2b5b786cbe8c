import { priced } from '@/app/ui/priced'
import { newLessonAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { formatQuantity } from '@/shared/quantity/format'
import { fieldReturn } from '@/shared/records/kinds/field-return'
import type { FieldReturn } from '@/shared/reliability/field-shown'

/** Every board that came back, and the way to a lesson from it. */
export function ReturnTable({ view, returns }: { view: ProgrammeView; returns: readonly FieldReturn[] }) {
  const mayPropose = !refusal('propose-lesson', view.actor)
  return (
    <RuledTable
      caption="Boards that came back"
      rows={returns}
      rowKey={({ id }) => id}
      columns={[
        { label: 'Assembly', names: true, cell: ({ assembly }) => assembly },
        { label: 'Came back', set: 'shrink', cell: ({ returnedOn }) => <Day at={returnedOn} /> },
        {
          label: 'Cause',
          cell: ({ cause }) =>
            fieldReturn.columns.cause.options.find(({ value }) => value === cause)?.label ?? cause,
        },
        {
          label: 'After',
          set: 'number',
          cell: ({ hours }) => (hours === undefined ? '–' : formatQuantity(hours, 'h', 6)),
        },
        { label: 'Joints', set: 'number', cell: ({ jointsFailed }) => jointsFailed },
        {
          label: priced('Cost'),
          set: 'number',
          cell: ({ cost }) => (cost === undefined ? '–' : formatQuantity(cost, 'currency')),
        },
        {
          label: 'Lesson',
          cell: ({ id, lesson }) => (
            <>
              {lesson ?? (mayPropose ? '' : '–')}{' '}
              {mayPropose && (
                <a href={newLessonAddress(view.code, { kind: 'record', key: id })}>Propose a lesson</a>
              )}
            </>
          ),
        },
      ]}
    />
  )
}

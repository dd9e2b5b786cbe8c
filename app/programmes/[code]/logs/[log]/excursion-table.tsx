import { SignalAnswer } from '@/app/signals/signal-answer'
import { Moment } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { formatNumber } from '@/shared/quantity/format'
import { OUTSIDE_WINDOW } from '@/shared/logs/signal-answers'
import { readingText } from '@/shared/charts/log-chart'
import type { Excursion } from '@/app/signals/excursions'

const SHOWN = 50

/** Stretches outside the specified window that still need a cause, the newest first. */
export function ExcursionTable({ open }: { open: readonly Excursion[] }) {
  if (open.length === 0) return null
  const shown = open.slice(-SHOWN).reverse()
  return (
    <RuledTable
      caption={
        shown.length < open.length
          ? `The newest ${shown.length} of ${open.length} unanswered stretches outside the specified window`
          : 'Unanswered stretches outside the specified window'
      }
      rows={shown}
      rowKey={({ instant }) => instant}
      columns={[
        { label: 'From', names: true, cell: ({ instant }) => <Moment at={new Date(instant)} /> },
        { label: 'Readings', set: 'number', cell: ({ readings }) => readings },
        { label: 'First value', set: 'number', cell: ({ value }) => formatNumber(value) },
        {
          label: 'Cause and action',
          cell: ({ instant }) => (
            <SignalAnswer
              answer={undefined}
              asked
              may={false}
              names={[OUTSIDE_WINDOW, readingText(instant)]}
              message={`outside the window from ${readingText(instant)}`}
            />
          ),
        },
      ]}
    />
  )
}

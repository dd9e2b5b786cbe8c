import type { ReactNode } from 'react'
import type { Column } from '@/app/ui/ruled-table'
import type { OptionComparison, OptionOutcome } from '@/shared/gate/option-outcome'
import { letterOf } from '@/shared/gate/option-letter'
import type { OptionStudy } from '@/shared/gate/option-study'

/** A row over all alternatives: what it is about, what stands today, and what each alternative gives. */
export interface OptionRow {
  readonly key: string
  readonly head: ReactNode
  readonly today?: ReactNode
  readonly cell: (outcome: OptionOutcome, position: number) => ReactNode
}

/** The alternatives as columns; today has one of its own unless an alternative is what stands. */
export function optionColumns(
  study: OptionStudy,
  { outcomes }: OptionComparison,
  withToday: boolean,
): Column<OptionRow>[] {
  const showToday = withToday && outcomes.every(({ changes, limits }) => changes.size + limits.length > 0)
  return [
    { label: 'What', names: true, cell: ({ head }) => head },
    ...(showToday ? [{ label: 'Today', cell: ({ today }: OptionRow) => today ?? '–' }] : []),
    ...outcomes.map((outcome, position): Column<OptionRow> => {
      const { name } = outcome.alternative
      return {
        label: `${letterOf(position)}: ${name}`,
        heading: (
          <>
            <span className="option-letter">{letterOf(position)}</span> {name}
            <span className="option-state">
              {study.adoption?.name === name && <strong>adopted</strong>}
              {outcome.changes.size + outcome.limits.length === 0 && <span>as today</span>}
            </span>
          </>
        ),
        cell: ({ cell }) => cell(outcome, position),
      }
    }),
  ]
}

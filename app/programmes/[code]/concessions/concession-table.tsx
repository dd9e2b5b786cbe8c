import { concessionAddress, findingAddress, tableAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findRule } from '@/shared/catalogue/standard-plan'
import { boundsInWords } from '@/shared/commands/signatures/concession-bounds'
import { departureInWords } from '@/shared/commands/signatures/departure-in-words'
import { boardsUnder, concessionName, concessionStatus } from '@/shared/gate/concession'
import type { ConcessionEntry } from '@/shared/gate/programme-state'

interface ConcessionTableProps {
  view: ProgrammeView
  concessions: readonly ConcessionEntry[]
  /** Name the finding of each: where they are of several. */
  withFinding?: boolean
}

/** Concessions and deviation permits with how far, how long and how they stand. */
export function ConcessionTable({ view, concessions, withFinding = false }: ConcessionTableProps) {
  const { facts } = view.state
  return (
    <RuledTable
      caption="Concessions and deviation permits"
      take={tableAddress(view.code, 'concessions')}
      captionHidden
      rows={concessions}
      rowKey={({ number }) => number}
      columns={[
        {
          label: 'No.',
          set: 'shrink',
          cell: (entry) => <a href={concessionAddress(view.code, entry.number)}>{concessionName(entry)}</a>,
        },
        ...(withFinding
          ? [
              {
                label: 'Finding',
                cell: ({ rule }: ConcessionEntry) => (
                  <a href={findingAddress(view.code, rule)}>{findRule(rule)?.title ?? rule}</a>
                ),
              },
            ]
          : []),
        {
          label: 'Why',
          names: true,
          cell: ({ why, permit }) => (permit ? `${departureInWords(permit)} ${why}` : why),
        },
        { label: 'For', cell: (entry) => forHowMany(entry, boardsUnder(entry, facts)) },
        {
          label: 'Status',
          set: 'shrink',
          cell: (entry) => concessionStatus(entry, view.judgement.findings.get(entry.rule), facts),
        },
      ]}
    />
  )
}

const forHowMany = (entry: ConcessionEntry, used: number | undefined): string =>
  `${boundsInWords(entry)}${used === undefined ? '' : ` Soldered since it was granted: ${used}.`}`

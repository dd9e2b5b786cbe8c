import { priced } from '@/app/ui/priced'
import {
  costAddress,
  findingAddress,
  gateAddress,
  programmesComparedAddress,
  routeCardAddress,
} from '@/app/addresses'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { readProgrammesCompared } from '@/lib/queries/works/programmes-compared'
import { amountInWords } from '@/shared/cost/amount-in-words'
import type { ProgrammeInBrief } from '@/shared/gate/programme-in-brief'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { estimateInWords } from '@/shared/quantity/format'
import { defectsAgainstBudget } from '@/shared/rules/assessment/defects-against-budget'
import { visitWorks } from '../visit-works'
import { WorksSheet } from '../works-sheet'

export const metadata = { title: 'Programmes compared – Liquidus' }

/** All programmes that a person may read, side by side. */
export default async function ProgrammesComparedPage() {
  const { person } = await visitWorks(programmesComparedAddress())
  const programmes = await readProgrammesCompared(person)
  return (
    <WorksSheet
      person={person}
      at={programmesComparedAddress()}
      title="Programmes compared"
      supplement="How far each is, what is open in it, what its joints show, and what quality has cost"
      place={[{ text: 'Programmes compared' }]}
      cells={[
        { label: 'Programmes', value: programmes.length },
        { label: 'Actions overdue', value: programmes.reduce((sum, one) => sum + one.overdueActions, 0) },
      ]}
    >
      {programmes.length === 0 ? (
        <Empty title="No programme">You belong to none yet.</Empty>
      ) : (
        <RuledTable
          caption="Programmes side by side"
          captionHidden
          rows={programmes}
          rowKey={({ code }) => code}
          columns={[
            {
              label: 'Programme',
              names: true,
              cell: ({ code, title }) => (
                <>
                  <a href={routeCardAddress(code)}>{code}</a>, {title}
                </>
              ),
            },
            {
              label: 'Stage',
              cell: ({ code, stage, openGates }) => (
                <>
                  <a href={gateAddress(code, stage)}>{STAGE_NAMES[stage]}</a>, {openGates} of {STAGES.length}{' '}
                  gates open
                </>
              ),
            },
            { label: 'Days in it', set: 'number', cell: ({ daysInStage }) => daysInStage },
            { label: 'Actions overdue', set: 'number', cell: ({ overdueActions }) => overdueActions },
            { label: 'Checks that fail', set: 'number', cell: ({ counts }) => counts.fails },
            { label: 'Undetermined', set: 'number', cell: ({ counts }) => counts.undetermined },
            { label: 'Defective joints a million', cell: (one) => <Rate of={one} /> },
            { label: 'Against the budget', cell: (one) => <Budget of={one} /> },
            {
              label: priced('Cost of quality'),
              set: 'number',
              cell: ({ code, qualityCost }) => <a href={costAddress(code)}>{amountInWords(qualityCost)}</a>,
            },
          ]}
        />
      )}
    </WorksSheet>
  )
}

/** With exact bounds, two-sided at 95 %; nothing is said of joints that nobody has seen. */
function Rate({ of: { defects } }: { of: ProgrammeInBrief }) {
  if (!defects.rate) return <>{defects.jointsSeen === 0 ? 'no joint inspected' : 'cannot be told'}</>
  const { perMillion, interval } = defects.rate
  return <>{estimateInWords(perMillion, interval)}</>
}

function Budget({ of: { code, budget } }: { of: ProgrammeInBrief }) {
  if (!budget) return <>not in its plan</>
  return (
    <a href={findingAddress(code, defectsAgainstBudget.id)}>
      <VerdictMark verdict={budget.verdict} />
    </a>
  )
}

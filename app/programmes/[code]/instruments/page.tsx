import { gaugeAddress, gaugesAddress, instrumentsAddress, lotsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { instrumentUses, type InstrumentUses } from '@/shared/instruments/instrument-uses'
import { worstVerdict } from '@/shared/rules/finding'
import { partOfStudy } from './study-part'

export const generateMetadata = programmeTitle(({ code }) => `Instruments in use, ${code}`)

/** The instruments that readings of the programme rest on: in calibration when used, and fit for what they measure. */
export default programmePage(async ({ visit, code }) => {
  const uses = instrumentUses(visit.view.state.facts.records)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[
        { text: 'Lots', href: lotsAddress(code) },
        { text: 'Instruments in use', href: gaugesAddress(code) },
      ]}
      title="Instruments in use"
      supplement="What the readings of this programme rest on"
      cells={[
        { label: 'In use', value: uses.length },
        { label: 'Studied', value: uses.filter(({ studies }) => studies.length > 0).length },
      ]}
    >
      {(view) =>
        uses.length > 0 ? (
          <InUse view={view} uses={uses} />
        ) : (
          <Empty title="No reading names an instrument yet">
            <a href={instrumentsAddress()}>The register of instruments</a>
          </Empty>
        )
      }
    </ProgrammeSheet>
  )
})

function InUse({ view, uses }: { view: ProgrammeView; uses: readonly InstrumentUses[] }) {
  return (
    <RuledTable
      caption="Instruments in use"
      captionHidden
      rows={uses}
      rowKey={({ instrument }) => instrument.id}
      columns={[
        {
          label: 'Tag',
          names: true,
          cell: ({ instrument: { tag } }) => <a href={gaugeAddress(view.code, tag)}>{tag}</a>,
        },
        { label: 'Measures', cell: ({ instrument }) => instrument.measures },
        { label: 'Due', set: 'shrink', cell: ({ instrument }) => <Day at={instrument.dueOn} /> },
        {
          label: 'Rests on it',
          cell: ({ tests, logs }) =>
            [counted(tests.length, 'test'), counted(logs.length, 'log')].filter(Boolean).join(', ') ||
            'nothing yet',
        },
        {
          label: 'Out of calibration when used',
          cell: ({ tests }) => counted(tests.filter(({ status }) => !status.stands).length, 'test') || 'none',
        },
        { label: 'Gauge study', cell: (one) => <Studied view={view} uses={one} /> },
      ]}
    />
  )
}

function Studied({ view, uses: { instrument, studies } }: { view: ProgrammeView; uses: InstrumentUses }) {
  const parts = studies.flatMap((study) => partOfStudy(view, instrument.tag, study) ?? [])
  if (parts.length === 0) return <>{studies.join(', ') || 'none'}</>
  return <VerdictMark verdict={worstVerdict(parts.map(({ verdict }) => verdict))} />
}

const counted = (count: number, what: string): string =>
  count === 0 ? '' : `${count} ${what}${count === 1 ? '' : 's'}`

import { instrumentsAddress, limitAddress } from '@/app/addresses'
import { ReadingsAgainstLimit } from '@/app/drawing/readings-against-limit'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { EXTRACTION_METHODS } from '@/shared/materials/extraction-methods'
import { extractedAreaCm2, perSquareInch } from '@/shared/physics/ionic-equivalents'
import { ionicResidueMax } from '@/shared/plan/limits/assessment-residue'
import { formatNumber } from '@/shared/quantity/format'
import { residueOf } from '@/shared/rules/assessment/ionic-cleanliness'
import { JudgedRecords } from '../judged-records'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** Each extract worked out: both faces, the allowance, the instrument’s factor, and what a manual rinse would read. */
export function Extracts({ view }: { view: ProgrammeView }) {
  const tests = recordsOfKind(view.state.facts.records, 'ionic-cleanliness')
  const finding = view.judgement.findings.get('ionic-cleanliness')
  const limit = finding?.parts?.[0]?.margin?.limit
  return (
    <JudgedRecords
      view={view}
      kind="ionic-cleanliness"
      rule="ionic-cleanliness"
      heading="Ionic residue"
      record="Record an extract"
      none="No extract is recorded"
      first="First extract what is left on a cleaned board, and record how much it was."
    >
      <RuledTable
        caption="Extracts, worked out"
        narrow="cards-early"
        rows={tests
          .map((test, at) => ({ test, verdict: finding?.parts?.[at]?.verdict }))
          .sort((a, b) => (a.test.testedOn < b.test.testedOn ? -1 : 1))}
        rowKey={({ test }) => test.id}
        columns={[
          { label: 'Assembly', names: true, cell: ({ test }) => test.assembly },
          { label: 'On', set: 'shrink', cell: ({ test }) => <Day at={test.testedOn} /> },
          {
            label: 'Both faces, cm²',
            set: 'number',
            cell: ({ test }) => formatNumber((2 * test.lengthMm * test.widthMm) / 100),
          },
          {
            label: 'With components, cm²',
            set: 'number',
            cell: ({ test }) => `${formatNumber(extractedAreaCm2(test))} (+${test.componentAllowancePct} %)`,
          },
          {
            label: 'In the extract, µg',
            set: 'number',
            cell: ({ test }) => formatNumber(test.concentrationUgPerMl * test.solventMl),
          },
          {
            label: 'Instrument factor',
            set: 'number',
            cell: ({ test }) => EXTRACTION_METHODS[test.method].factor.toFixed(2),
          },
          {
            label: 'As a manual rinse reads, µg/cm²',
            set: 'number',
            cell: ({ test }) => formatNumber(residueOf(test)),
          },
          {
            label: 'µg/in²',
            set: 'number',
            cell: ({ test }) => formatNumber(perSquareInch(residueOf(test))),
          },
          { label: 'Judged', cell: ({ verdict }) => verdict && <VerdictMark verdict={verdict} /> },
        ]}
      />
      <div className="picture-row">
        <ReadingsAgainstLimit
          title="Extracts against the limit"
          characteristic="Residue as sodium chloride"
          unit="µg/cm²"
          readings={tests.map(residueOf)}
          limits={limit === undefined ? {} : { atMost: limit }}
        />
        <Factors view={view} />
      </div>
    </JudgedRecords>
  )
}

/** The factors, with where they come from. */
function Factors({ view }: { view: ProgrammeView }) {
  return (
    <div>
      <Disclosure summary="Factors of instruments, and where they come from">
        <RuledTable
          caption="Equivalence factors"
          captionHidden
          rows={Object.values(EXTRACTION_METHODS)}
          rowKey={({ label }) => label}
          columns={[
            { label: 'Extraction', names: true, cell: ({ label }) => label },
            { label: 'Divide by', set: 'number', cell: ({ factor }) => factor.toFixed(2) },
            { label: 'Source', cell: ({ source }) => `${source.cite} (${source.how})` },
          ]}
        />
      </Disclosure>
      <p className="field-hint">
        A stronger extraction reads higher: its reading is divided by its factor, so that the limit of the
        manual rinse applies.{' '}
        <a href={limitAddress(view.code, ionicResidueMax.key)}>The limit and its layers</a>;{' '}
        <a href={instrumentsAddress()}>instruments in calibration</a>.
      </p>
    </div>
  )
}

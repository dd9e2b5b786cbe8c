import { ResidueBeforeAfter } from '@/app/drawing/residue-before-after'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { RecordOf } from '@/shared/records/record-kinds'
import { JudgedRecords } from '../judged-records'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** The same board before and after cleaning. */
export function Removal({ view }: { view: ProgrammeView }) {
  const trials = recordsOfKind(view.state.facts.records, 'flux-removal')
  const finding = view.judgement.findings.get('flux-removal-trial')
  const limit = finding?.parts?.[0]?.margin?.limit
  return (
    <JudgedRecords
      view={view}
      kind="flux-removal"
      rule="flux-removal-trial"
      heading="Flux removal, before and after"
      record="Record a trial"
      none="No trial of the cleaning is recorded"
      first="First clean boards as they will be cleaned, look at them, and record the trial."
    >
      <ResidueBeforeAfter
        title="Residue on the same board, before and after"
        limit={limit}
        trials={trials.map(({ assembly, cleaning, beforeUgPerCm2, afterUgPerCm2, residue }) => ({
          name: assembly,
          how: cleaning,
          before: beforeUgPerCm2,
          after: afterUgPerCm2,
          seen: SEEN[residue],
        }))}
      />
    </JudgedRecords>
  )
}

const SEEN: Record<RecordOf<'flux-removal'>['residue'], string> = {
  none: 'nothing to be seen',
  traces: 'traces, away from contacts',
  plain: 'plain to see',
}

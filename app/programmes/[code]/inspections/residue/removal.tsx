import { findingAddress, recordKindAddress } from '@/app/addresses'
import { ResidueBeforeAfter } from '@/app/drawing/residue-before-after'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { RecordOf } from '@/shared/records/record-kinds'
import { FindingLine } from '../finding-line'

/** The same board before and after cleaning. */
export function Removal({ view }: { view: ProgrammeView }) {
  const trials = (view.state.facts.records.byKind.get('flux-removal') ??
    []) as readonly RecordOf<'flux-removal'>[]
  const finding = view.judgement.findings.get('flux-removal-trial')
  const limit = finding?.parts?.[0]?.margin?.limit
  return (
    <Section
      heading="Flux removal, before and after"
      aside={
        <span className="section-links">
          <a href={recordKindAddress(view.code, 'flux-removal')}>Record a trial</a>
          <a href={findingAddress(view.code, 'flux-removal-trial')}>Working</a>
        </span>
      }
    >
      <FindingLine finding={finding} />
      {trials.length === 0 ? (
        <Empty title="No trial of the cleaning is recorded" />
      ) : (
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
      )}
    </Section>
  )
}

const SEEN: Record<RecordOf<'flux-removal'>['residue'], string> = {
  none: 'nothing to be seen',
  traces: 'traces, away from contacts',
  plain: 'plain to see',
}

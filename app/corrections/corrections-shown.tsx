import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import type { CorrectedField, Correction } from '@/shared/records/correction'

interface CorrectionsShownProps {
  /** What was corrected, for the table's caption: "the lot". */
  of: string
  corrections: readonly Correction[]
  fieldsOf: (before: Correction['before'], after: Correction['after']) => readonly CorrectedField[]
}

/** Every correction with what it replaced beside what it says, by whom, when and why; newest first. */
export function CorrectionsShown({ of, corrections, fieldsOf }: CorrectionsShownProps) {
  return corrections.toReversed().map(({ number, before, after, reason, byName, at }) => (
    <div key={number} className="correction">
      <p>
        Corrected by {byName} on <Day at={at} /> because: {reason}
      </p>
      <RuledTable
        caption={`Correction ${number} of ${of}`}
        captionHidden
        rows={fieldsOf(before, after)}
        rowKey={({ label }) => label}
        columns={[
          { label: 'Value', names: true, set: 'shrink', cell: ({ label }) => label },
          { label: 'As it was', cell: (field) => <del>{field.before}</del> },
          { label: 'As it stands', cell: (field) => <ins>{field.after}</ins> },
        ]}
      />
    </div>
  ))
}

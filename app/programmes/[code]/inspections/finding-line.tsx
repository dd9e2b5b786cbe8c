import { VerdictMark } from '@/app/ui/verdict-mark'
import type { Finding } from '@/shared/rules/finding'

/** A finding in a line above what it was found from. */
export function FindingLine({ finding }: { finding: Finding | undefined }) {
  if (!finding) return null
  return (
    <div>
      <p className="verdict-line">
        <VerdictMark verdict={finding.verdict} size={28} /> {finding.found}
      </p>
      <p className="field-hint">Requirement: {finding.limit}</p>
    </div>
  )
}

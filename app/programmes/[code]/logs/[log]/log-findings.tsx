import { findingAddress } from '@/app/addresses'
import { FindingSheet } from '@/app/findings/finding-sheet'
import { Cautions } from '@/app/ui/cautions'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Log } from '@/shared/records/log'
import { findingsReading } from '@/app/signals/log-state'

/** The findings that read this log, with what to add or change worked out, and the cautions of the work. */
export function LogFindings({ view, log }: { view: ProgrammeView; log: Log }) {
  const rules = view.state.items.flatMap(({ definition }) => definition.rules)
  const read = findingsReading(log, rules, view.judgement.findings)
  if (read.length === 0) return null
  return (
    <Section heading="Against the specification">
      <Cautions of={read.flatMap(({ finding }) => finding.cautions ?? [])} />
      {read.map(({ rule: { id, title }, finding }) => (
        <FindingSheet
          key={id}
          title={title}
          href={findingAddress(view.code, id)}
          finding={finding}
          cautioned
        />
      ))}
    </Section>
  )
}

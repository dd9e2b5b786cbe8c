import { findingAddress } from '@/app/addresses'
import { FindingSheet } from '@/app/findings/finding-sheet'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Log } from '@/shared/records/log'
import { readableOf } from '@/shared/rules/rule'

/** The findings that read logs of this characteristic. */
export function LogFindings({ view, log }: { view: ProgrammeView; log: Log }) {
  const readers = view.state.items
    .flatMap(({ definition }) => definition.rules)
    .filter(({ reads }) =>
      Object.values(reads).some((read) => readableOf(read).key === `logs:${log.characteristic}`),
    )
  if (readers.length === 0) return null
  return (
    <Section heading="Against the specification">
      {readers.map(({ id, title }) => {
        const finding = view.judgement.findings.get(id)
        return (
          finding && (
            <FindingSheet key={id} title={title} href={findingAddress(view.code, id)} finding={finding} />
          )
        )
      })}
    </Section>
  )
}

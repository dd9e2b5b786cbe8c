import { findingAddress, logAddress } from '@/app/addresses'
import { FindingSheet } from '@/app/findings/finding-sheet'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { storeClimate } from '@/shared/records/characteristics/store-climate'
import { storeClimateRule } from '@/shared/rules/control/store-climate'

/** The conditions in which lots wait, against what their time in store was calculated for. */
export function StoreClimate({ view }: { view: ProgrammeView }) {
  const finding = view.judgement.findings.get(storeClimateRule.id)
  const logs = view.state.facts.records.logs.get(storeClimate.key) ?? []
  if (!finding) return null
  return (
    <Section heading="Conditions in store">
      <FindingSheet
        title={storeClimateRule.title}
        href={findingAddress(view.code, storeClimateRule.id)}
        finding={finding}
        code={view.code}
      />
      {logs.length > 0 && (
        <p>
          Logged:{' '}
          {logs.map(({ code }, position) => (
            <span key={code}>
              {position > 0 && ', '}
              <a href={logAddress(view.code, code)}>{code}</a>
            </span>
          ))}
        </p>
      )}
    </Section>
  )
}

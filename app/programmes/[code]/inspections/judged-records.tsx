import type { ReactNode } from 'react'
import { findingAddress, recordKindAddress } from '@/app/addresses'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'
import { FindingLine } from './finding-line'

interface JudgedRecordsProps {
  view: ProgrammeView
  kind: RecordKindKey
  /** The rule that judges these records. */
  rule: string
  heading: string
  /** What leads to the form: "Record a trial". */
  record: string
  /** What stands in place of the records while there are none. */
  none: string
  /** How the first comes to be, as a sentence. */
  first: string
  children: ReactNode
}

/** The records of one kind as a section: where to record one, what the rule found, and the records as they are shown. */
export function JudgedRecords({
  view,
  kind,
  rule,
  heading,
  record,
  none,
  first,
  children,
}: JudgedRecordsProps) {
  const { byKind } = view.state.facts.records
  return (
    <Section
      heading={heading}
      aside={
        <span className="section-links">
          <a href={recordKindAddress(view.code, kind)}>{record}</a>
          <a href={findingAddress(view.code, rule)}>Working</a>
        </span>
      }
    >
      <FindingLine finding={view.judgement.findings.get(rule)} />
      {(byKind.get(kind)?.length ?? 0) === 0 ? (
        <Empty title={none}>
          <FirstStep
            first={first}
            refused={refusal('add-record', view.actor, RECORD_KINDS[kind])}
            href={recordKindAddress(view.code, kind)}
            does={record}
          />
        </Empty>
      ) : (
        children
      )}
    </Section>
  )
}

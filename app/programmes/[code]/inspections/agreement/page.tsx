import { agreementAddress, blindCallAddress, findingAddress, inspectionsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ButtonLink } from '@/app/ui/button'
import { Disclosure } from '@/app/ui/disclosure'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { agreementStudies, type AgreementStudy } from '@/shared/inspection/agreement-study'
import { inspectorCall } from '@/shared/records/kinds/inspector-call'
import { InspectionPlaces } from '../places'
import { PasteCalls } from './paste-calls'
import { Study } from './study'
import { recordsOfKind } from '@/shared/records/records-of-kind'

const CONFIDENCE = 0.95

export const generateMetadata = programmeTitle(({ code }) => `Agreement of inspectors, ${code}`)

/** Blind sets called by several inspectors: how far they agree, and on which joints they do not. */
export default programmePage(async ({ visit, code }) => {
  const calls = recordsOfKind(visit.view.state.facts.records, 'inspector-call')
  const studies = agreementStudies(calls, CONFIDENCE)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={inspectionsAddress(code)}
      place={[{ text: 'Inspections', href: inspectionsAddress(code) }, { text: 'Agreement of inspectors' }]}
      title="Agreement of inspectors"
      supplement="The same joints called blind by several people: agreement beyond chance"
      cells={[
        { label: 'Studies', value: studies.length },
        { label: 'Calls', value: calls.length },
      ]}
    >
      {(view) => {
        const finding = view.judgement.findings.get('inspector-agreement')
        return (
          <>
            <InspectionPlaces code={view.code} at={agreementAddress(view.code)} />
            {finding && (
              <Section
                heading="What is asked"
                aside={<a href={findingAddress(view.code, finding.rule)}>Working and sources</a>}
              >
                <p className="verdict-line">
                  <VerdictMark verdict={finding.verdict} size={28} /> {finding.found}
                </p>
                <p className="field-hint">{finding.limit}</p>
              </Section>
            )}
            {!refusal('add-record', view.actor, inspectorCall) && (
              <Section
                heading="Call a set"
                lead="Nobody may see another’s calls first: the page for calling shows none. Mix in a third or so of defective joints, and let each set be called twice by the same person, some days apart."
              >
                <p>
                  <ButtonLink kind="primary" href={blindCallAddress(view.code)}>
                    Start a blind appraisal
                  </ButtonLink>
                </p>
                <PasteCalls view={view} />
              </Section>
            )}
            {studies.length === 0 ? (
              <Empty title="No set has been called yet">
                Two inspectors or more call the same joints; whoever prepared the set records what is known of
                them with calls from a table.
              </Empty>
            ) : (
              studies
                .toReversed()
                .map((study) => <StudyOnceCalled key={study.study} study={study} view={view} />)
            )}
          </>
        )
      }}
    </ProgrammeSheet>
  )
})

/**
 * What was called, and what is known, once its reader has called the set; before that folded away from whoever
 * still may, so that nobody meets the reference on the way to an appraisal.
 */
function StudyOnceCalled({ study, view }: { study: AgreementStudy; view: ProgrammeView }) {
  const mayStillCall = !refusal('add-record', view.actor, inspectorCall)
  if (!mayStillCall || study.inspectors.includes(view.actor.name)) return <Study study={study} />
  return (
    <Disclosure summary={`Results of ${study.study}: open them only if you will not call this set`}>
      <Study study={study} />
    </Disclosure>
  )
}

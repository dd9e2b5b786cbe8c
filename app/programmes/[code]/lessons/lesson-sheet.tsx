import { findingAddress, itemAddress, recordsAddress } from '@/app/addresses'
import { LessonMark } from '@/app/lessons/lesson-mark'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { lessonRetirementRefusal, type Lesson } from '@/shared/lessons/lesson'
import { changeInWords } from '@/shared/lessons/lesson-change'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { refusal } from '@/shared/policy'
import { DecisionForm } from './decision-form'
import { RetireForm } from './retire-form'

interface LessonSheetProps {
  lesson: Lesson
  view: ProgrammeView
  hasPassword: boolean
}

/** One lesson in full: what was learnt from what, the change, and who decided, or the form to decide. */
export function LessonSheet({ lesson, view, hasPassword }: LessonSheetProps) {
  const { number, title, learnt, proposed, decided, retired, change } = lesson
  const mayNot = refusal('decide-lesson', view.actor, lesson)
  return (
    <Section id={`lesson-${number}`} heading={`${number}. ${title}`} aside={<LessonMark lesson={lesson} />}>
      <p className="prose">{learnt}</p>
      <RuledTable
        caption={`Lesson ${number}`}
        captionHidden
        rowKey={({ label }) => label}
        columns={[
          { label: 'What', names: true, set: 'shrink', cell: ({ label }) => label },
          { label: 'Says', cell: ({ value }) => value },
        ]}
        rows={[
          { label: 'Learnt from', value: <SourceLink lesson={lesson} /> },
          { label: 'Later programmes get', value: changeInWords(change) },
          ...(change.kind === 'item'
            ? [
                {
                  label: 'The item asks',
                  value: `${change.item.asks} ${STAGE_NAMES[change.item.stage]}; owned by ${DEPARTMENT_NAMES[change.item.owner].toLowerCase()}.`,
                },
              ]
            : []),
          {
            label: 'Proposed by',
            value: (
              <>
                {proposed.byName}, <Day at={proposed.at} />
              </>
            ),
          },
          ...(decided
            ? [
                {
                  label: decided.accepted ? 'Accepted by' : 'Declined by',
                  value: (
                    <>
                      {decided.byName}, <Day at={decided.at} />: {decided.why}
                    </>
                  ),
                },
              ]
            : []),
          ...(retired
            ? [
                {
                  label: 'Retired by',
                  value: (
                    <>
                      {retired.byName}, <Day at={retired.at} />: {retired.why}
                    </>
                  ),
                },
              ]
            : []),
        ]}
      />
      {!refusal('retire-lesson', view.actor) && !lessonRetirementRefusal(lesson) && (
        <RetireForm code={view.code} lesson={number} hasPassword={hasPassword} />
      )}
      {!decided &&
        (mayNot ? (
          <p className="field-hint">Waits for quality. {mayNot}</p>
        ) : (
          <DecisionForm code={view.code} lesson={number} hasPassword={hasPassword} />
        ))}
    </Section>
  )
}

function SourceLink({ lesson: { programme, source } }: { lesson: Lesson }) {
  const href = {
    finding: findingAddress(programme, source.key),
    item: itemAddress(programme, source.key),
    record: recordsAddress(programme),
  }[source.kind]
  return <a href={href}>{source.says}</a>
}

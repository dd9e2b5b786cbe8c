import { forbidden } from 'next/navigation'
import { newLessonAddress, programmeLessonsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { refusal } from '@/shared/policy'
import { LessonForm } from './lesson-form'

export const generateMetadata = programmeTitle(({ code }) => `Propose a lesson, ${code}`)

/** Proposing a lesson: what was learnt, from what, and what later programmes should start with. */
export default programmePage<object, { kind?: string; key?: string; change?: string }>(
  async ({ visit, code, searchParams: { kind, key, change } }) => {
    if (refusal('propose-lesson', visit.view.actor)) forbidden()
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={programmeLessonsAddress(code)}
        place={[
          { text: 'Lessons', href: programmeLessonsAddress(code) },
          { text: 'Propose', href: newLessonAddress(code) },
        ]}
        title="Propose a lesson"
        supplement="Quality decides; accepted, it comes into every programme opened afterwards"
      >
        {(view) => (
          <LessonForm
            view={view}
            source={kind && key ? `${kind}:${key}` : ''}
            change={change === 'limit' ? 'limit' : 'item'}
          />
        )}
      </ProgrammeSheet>
    )
  },
)

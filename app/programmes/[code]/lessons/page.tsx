import { capitalised } from '@/shared/quantity/capitalised'
import { lessonsAddress, newLessonAddress, programmeLessonsAddress, tableAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { TakeTable } from '@/app/ui/take-table'
import { lessonsOf } from '@/lib/queries/lessons'
import { LESSON_STANDINGS, lessonStatus } from '@/shared/lessons/lesson'
import { refusal } from '@/shared/policy'
import { BroughtBy } from './brought-by'
import { LessonSheet } from './lesson-sheet'

export const generateMetadata = programmeTitle(({ code }) => `Lessons, ${code}`)

/** What this programme taught the later ones, and what earlier ones taught it. */
export default programmePage(async ({ visit, code }) => {
  const lessons = await lessonsOf(visit.view.state.programme.id)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={programmeLessonsAddress(code)}
      place={[{ text: 'Lessons' }]}
      title="Lessons"
      supplement={
        <>
          What this programme teaches the ones after it; <a href={lessonsAddress()}>all lessons</a>
        </>
      }
      cells={LESSON_STANDINGS.map((status) => ({
        label: capitalised(status),
        value: lessons.filter((one) => lessonStatus(one) === status).length,
      }))}
    >
      {(view) => (
        <>
          {lessons.length === 0 && (
            <Empty title="Nothing is proposed yet">
              A field return, a finding or an item that taught something can become an item of later plans, or
              a stricter company limit.
            </Empty>
          )}
          {lessons.map((lesson) => (
            <LessonSheet
              key={lesson.number}
              lesson={lesson}
              view={view}
              hasPassword={visit.person.hasPassword}
            />
          ))}
          {lessons.length > 0 && <TakeTable address={tableAddress(code, 'lessons')} what="All lessons" />}
          {!refusal('propose-lesson', view.actor) && (
            <p className="form-actions">
              <ButtonLink href={newLessonAddress(code)}>Propose a lesson</ButtonLink>
            </p>
          )}
          <BroughtBy view={view} />
        </>
      )}
    </ProgrammeSheet>
  )
})

import { forbidden } from 'next/navigation'
import { newLessonAddress, programmeLessonsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { refusal } from '@/shared/policy'
import { LessonForm } from './lesson-form'

interface NewLessonPageProps {
  params: Promise<{ code: string }>
  searchParams: Promise<{ kind?: string; key?: string; change?: string }>
}

/** Proposing a lesson: what was learnt, from what, and what later programmes should start with. */
export default async function NewLessonPage({ params, searchParams }: NewLessonPageProps) {
  const { code: asked } = await params
  const { kind, key, change } = await searchParams
  const visit = await visitProgramme(asked)
  if (refusal('propose-lesson', visit.view.actor)) forbidden()
  const code = visit.view.code
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
}

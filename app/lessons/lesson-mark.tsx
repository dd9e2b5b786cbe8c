import { Sign, type SignKind } from '@/app/ui/sign'
import { lessonStanding, type Lesson, type LessonStanding } from '@/shared/lessons/lesson'

const SIGNS: Readonly<Record<LessonStanding, SignKind>> = {
  proposed: 'info',
  accepted: 'success',
  declined: 'refusal',
  retired: 'info',
}

/** Whether a lesson is proposed, accepted, declined or retired: sign and word. */
export function LessonMark({ lesson }: { lesson: Lesson }) {
  const standing = lessonStanding(lesson)
  return (
    <span className="mark">
      <Sign kind={SIGNS[standing]} size={16} /> {standing}
    </span>
  )
}

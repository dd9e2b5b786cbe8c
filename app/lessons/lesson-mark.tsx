import { Sign, type SignKind } from '@/app/ui/sign'
import { lessonStatus, type Lesson, type LessonStatus } from '@/shared/lessons/lesson'

const SIGNS: Readonly<Record<LessonStatus, SignKind>> = {
  proposed: 'info',
  accepted: 'success',
  declined: 'refusal',
  retired: 'info',
}

/** Whether a lesson is proposed, accepted, declined or retired: sign and word. */
export function LessonMark({ lesson }: { lesson: Lesson }) {
  const status = lessonStatus(lesson)
  return (
    <span className="mark">
      <Sign kind={SIGNS[status]} size={16} /> {status}
    </span>
  )
}

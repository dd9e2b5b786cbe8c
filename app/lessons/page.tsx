import { forbidden } from 'next/navigation'
import { lessonAddress, lessonsAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { lessonsFor } from '@/lib/queries/lessons'
import {
  LESSON_STANDINGS,
  lessonName,
  lessonStatus,
  type Lesson,
  type LessonStatus,
} from '@/shared/lessons/lesson'
import { changeInWords } from '@/shared/lessons/lesson-change'
import { LessonMark } from './lesson-mark'

export const metadata = { title: 'Lessons – Liquidus' }

const PARTS: Readonly<Record<LessonStatus, { heading: string; lead: string }>> = {
  proposed: {
    heading: 'Waiting for quality',
    lead: 'Proposed in programmes you may read; they change nothing until quality decides.',
  },
  accepted: {
    heading: 'Accepted',
    lead: 'Every programme opened since has them in its plan; its trail says from which lesson.',
  },
  retired: {
    heading: 'Retired',
    lead: 'Accepted once; programmes opened since they were retired start without them.',
  },
  declined: { heading: 'Declined', lead: 'With the reason, so that nobody has to ask twice.' },
}

/** What programmes taught, and what became of it in the standard plan. */
export default async function LessonsPage() {
  const person = await requirePerson(lessonsAddress())
  if (person.administrator) forbidden()
  const lessons = await lessonsFor(person)
  const parts = LESSON_STANDINGS.map((status) => ({
    ...PARTS[status],
    own: lessons.filter((one) => lessonStatus(one) === status),
  }))
  return (
    <DeskSheet
      person={person}
      at={lessonsAddress()}
      title="Lessons"
      supplement="What the programmes taught, and what later ones start with because of it"
      cells={parts.map(({ heading, own }) => ({ label: heading, value: own.length }))}
    >
      {lessons.length === 0 ? (
        <Empty title="No lesson yet">
          One is proposed in a programme, from a field return, a finding or an item; quality accepts or
          declines it.
        </Empty>
      ) : (
        parts
          .filter(({ own }) => own.length > 0)
          .map(({ heading, lead, own }) => (
            <Section key={heading} heading={heading} lead={lead}>
              <LessonTable caption={heading} lessons={own} />
            </Section>
          ))
      )}
    </DeskSheet>
  )
}

function LessonTable({ caption, lessons }: { caption: string; lessons: readonly Lesson[] }) {
  return (
    <RuledTable
      caption={caption}
      captionHidden
      rows={lessons}
      rowKey={lessonName}
      columns={[
        {
          label: 'Lesson',
          names: true,
          cell: (lesson) => <a href={lessonAddress(lesson.programme, lesson.number)}>{lesson.title}</a>,
        },
        { label: 'What was learnt', cell: ({ learnt }) => learnt },
        { label: 'Change', cell: ({ change }) => changeInWords(change) },
        { label: 'From', set: 'shrink', cell: ({ programme, number }) => `${programme}, no. ${number}` },
        { label: 'Status', set: 'shrink', cell: (lesson) => <LessonMark lesson={lesson} /> },
        {
          label: 'By',
          cell: ({ proposed, decided, retired }) => {
            const { byName, at } = retired ?? decided ?? proposed
            const why = (retired ?? decided)?.why
            return (
              <>
                {byName}, <Day at={at} />
                {why && `: ${why}`}
              </>
            )
          },
        },
      ]}
    />
  )
}

import type { Transaction } from '@/lib/db/transaction'
import { lessonOf, withProgramme } from '@/lib/programme/lesson-row'
import { Refused } from '@/shared/refused'

/** A lesson of this programme, with the id of its row. Refused when there is none of that number. */
export async function loadLesson(tx: Transaction, programmeId: string, number: number) {
  const row = await tx.lesson.findUnique({
    where: { programmeId_number: { programmeId, number } },
    ...withProgramme,
  })
  if (!row) throw new Refused(`There is no lesson ${number} in this programme.`)
  return { id: row.id, lesson: lessonOf(row) }
}

import { valueOf } from '@/app/pictures/value-of'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { boardLength, boardWidth } from '@/shared/plan/parameters/assessment-inspection'
import { boardOutline, type BoardOutline } from '@/shared/inspection/board-outline'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** The board that defects are placed on, as far as the programme tells its size. */
export function outlineOf(view: ProgrammeView): BoardOutline | undefined {
  const { records } = view.state.facts
  return boardOutline(
    { lengthMm: valueOf(view, boardLength), widthMm: valueOf(view, boardWidth) },
    recordsOfKind(records, 'ionic-cleanliness'),
    records.inspections,
  )
}

import { valueOf } from '@/app/pictures/value-of'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { boardLength, boardWidth } from '@/shared/plan/parameters/assessment-inspection'
import { boardOutline, type BoardOutline } from '@/shared/inspection/board-outline'
import type { RecordOf } from '@/shared/records/record-kinds'

/** The board that defects are placed on, as far as the programme tells its size. */
export function outlineOf(view: ProgrammeView): BoardOutline | undefined {
  const { inspections, byKind } = view.state.facts.records
  return boardOutline(
    { lengthMm: valueOf(view, boardLength), widthMm: valueOf(view, boardWidth) },
    (byKind.get('ionic-cleanliness') ?? []) as readonly RecordOf<'ionic-cleanliness'>[],
    inspections,
  )
}

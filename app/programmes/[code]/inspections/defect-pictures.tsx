import { BoardPlan } from '@/app/drawing/board-plan'
import { Pareto } from '@/app/drawing/pareto'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Defect } from '@/shared/records/inspection'

/** Defects by kind, and where on the board they lie. */
export function DefectPictures({ view }: { view: ProgrammeView }) {
  const defects = view.state.facts.records.inspections.flatMap((inspection) => inspection.defects)
  if (defects.length === 0) return null
  const counts = new Map<string, number>()
  for (const { kind } of defects) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  const placed = defects.filter(
    (defect): defect is Defect & { xMm: number; yMm: number } =>
      defect.xMm !== undefined && defect.yMm !== undefined,
  )
  return (
    <div className="picture-row">
      <Pareto
        title="Defects by kind"
        what="defects"
        counts={[...counts].map(([name, count]) => ({ name, count }))}
      />
      {placed.length > 0 && (
        <BoardPlan
          title="Where the defects lie"
          outlineMm={outlineAround(placed)}
          defects={placed.map(({ kind, joint, xMm, yMm }) => ({ kind, joint, xMm, yMm }))}
        />
      )}
    </div>
  )
}

/** The smallest board that holds every defect, with a border: the outline itself is not recorded. */
function outlineAround(defects: readonly { xMm: number; yMm: number }[]) {
  const wide = Math.max(...defects.map(({ xMm }) => xMm)) + 10
  const high = Math.max(...defects.map(({ yMm }) => yMm)) + 10
  return [
    { xMm: 0, yMm: 0 },
    { xMm: wide, yMm: 0 },
    { xMm: wide, yMm: high },
    { xMm: 0, yMm: high },
  ]
}

import { fromMemory } from '@/shared/sources/provenance'
import { gridShareMin } from '@/shared/plan/limits/lead-holes'
import { gridShareGuard } from '@/shared/plan/limits/specification-guards'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { isStated } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { rule } from '@/shared/rules/rule'
import { count } from '@/shared/rules/measure'

export const gridShare = rule({
  id: 'grid-share',
  title: 'Holes on the grid',
  why: 'Insertion, drilling and test fixtures work to a grid; each hole off it costs setting and is a place for error.',
  formula: 'joints on the grid/all joints ≥ least',
  stage: 'specification',
  version: 2,
  reads: { holes: leadHoles, min: gridShareMin, guard: gridShareGuard },
  judge({ holes, min, guard }) {
    const stated = holes.filter((row) => row.onGrid !== undefined)
    const limit = `At least ${formatQuantity(min.value, '%')} of the joints (${min.document})`
    const sources = [
      fromMemory('IEC 60097: basic grid 2.54 mm, with 1.27 and 0.635 mm below it'),
      fromMemory('IEC 60097: metric grid of 0.5 mm, secondary 0.05 mm'),
    ]
    if (stated.length === 0) {
      const unsaid = 'The hole table does not say which holes lie on a grid'
      return isStated(min)
        ? { ...undetermined(`${unsaid}.`, ['which holes lie on the grid'], limit), sources }
        : notApplicable(`${unsaid}, and the programme asks for none.`)
    }
    const joints = (rows: typeof holes): number => rows.reduce((sum, row) => sum + row.joints, 0)
    const all = joints(holes)
    const onGrid = joints(holes.filter((row) => row.onGrid === true))
    const found = (onGrid / all) * 100
    const margin = {
      found,
      limit: min.value,
      unit: '%',
      direction: 'at least',
      guardBand: guard.value,
    } as const
    const off = holes.filter((row) => row.onGrid !== true).map((row) => row.component)
    const verdict = verdictOn(margin)
    return {
      verdict,
      found: `${onGrid} of ${all} joints lie on the grid, ${formatQuantity(found, '%', 3)}.${off.length > 0 ? ` Off it or not stated: ${off.join(', ')}.` : ''}`,
      limit,
      margin,
      measured: { onGrid: count(onGrid, 'joints'), joints: count(all, 'joints'), off },
      working: [
        {
          label: 'Share',
          formula: 'joints on the grid/all joints',
          numbers: `${onGrid}/${all}`,
          result: formatQuantity(found, '%'),
        },
      ],
      sources,
      ...(verdict !== 'meets' &&
        off.length > 0 && { remedy: { message: `Move onto the grid what can move: ${off.join(', ')}.` } }),
    }
  },
})

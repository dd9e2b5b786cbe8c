import { bowThroughHoleMax, bowWithSurfaceMountMax } from '@/shared/plan/limits/laminate'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { bowAndTwist } from '@/shared/plan/parameters/laminate'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn } from '@/shared/rules/finding'
import { optional, rule } from '@/shared/rules/rule'

export const bowAndTwistRule = rule({
  id: 'bow-and-twist',
  title: 'Bow and twist',
  why: 'A board that is not flat dips unevenly into the wave, and strains its joints when it is screwed down flat.',
  formula: 'per cent ordered ≤ limit with surface-mount parts, unless there are stated to be none',
  stage: 'specification',
  version: 2,
  reads: {
    allowed: bowAndTwist,
    surfaceMount: optional(surfaceMountJoints),
    withSurfaceMount: bowWithSurfaceMountMax,
    throughHole: bowThroughHoleMax,
  },
  judge({ allowed, surfaceMount, withSurfaceMount, throughHole }) {
    const governing = surfaceMount === 0 ? throughHole : withSurfaceMount
    const kind = surfaceMount === 0 ? 'without surface-mount parts' : 'with surface-mount parts'
    const unsaid = surfaceMount === undefined ? '; surface-mount joints are not specified' : ''
    // What is ordered may equal the limit; the lot is measured when it comes.
    const margin = {
      found: allowed,
      limit: governing.value,
      unit: '%',
      direction: 'at most',
      guardBand: 0,
    } as const
    const verdict = verdictOn(margin)
    return {
      verdict,
      found: `The order allows ${formatQuantity(allowed, '%')}, ${kind}${unsaid}.`,
      limit: `At most ${formatQuantity(governing.value, '%')} ${kind} (${governing.document})`,
      margin,
      measured: { surfaceMount: surfaceMount === undefined ? 'not specified' : surfaceMount > 0 },
      working: [
        {
          label: 'On a board of 160 mm',
          formula: 'length · per cent',
          numbers: `160 mm · ${formatQuantity(allowed, '%')}`,
          result: formatQuantity(1.6 * allowed, 'mm'),
        },
      ],
      sources: [governing.limit.byDefault.from],
      ...(verdict !== 'meets' && {
        remedy: {
          message: `Order at most ${formatQuantity(governing.value, '%')}.`,
          parameter: bowAndTwist.key,
          value: governing.value,
        },
      }),
    }
  },
})

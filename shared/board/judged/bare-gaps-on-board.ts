import { bridgingGapMin } from '@/shared/plan/limits/spacings'
import { bridgingGuard } from '@/shared/plan/limits/specification-guards'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import { GAP_REACH_MM, type Board } from '../board'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'
import type { Part } from '@/shared/rules/finding'

/** Every gap between bare lands, one of them of a hole for a lead, against bridging. */
export const bareGapsOnBoard = ({ landGaps, holes, layers }: Board) =>
  rule({
    id: 'bare-gaps-on-board',
    title: 'Gaps between bare lands',
    why: 'Solder joins bare lands that lie close: each such place of the board is looked at, not only the one that somebody listed.',
    formula: 'gap between bare lands of two nets ≥ least, on the bottom where there is one',
    stage: 'specification',
    version: 1,
    reads: { gap: bridgingGapMin, guard: bridgingGuard },
    judge({ gap, guard }) {
      if (!holes.some(({ kind }) => kind === 'component'))
        return notApplicable('The files have no hole for a lead.')
      const guardBand = (guard.value / 100) * gap.value
      const near = landGaps.map(({ nets, layer, gapMm, at }): PlacedPart => ({
        ...partOn({
          subject: `${nets.join(' to ')}, ${layer}`,
          found: `${inMm(gapMm)} bare`,
          margin: {
            found: toMicrometre(gapMm),
            limit: gap.value,
            unit: 'mm',
            direction: 'at least',
            guardBand,
          },
        }),
        at,
        layer,
        rank: gapMm,
      }))
      return judgedByParts({
        parts: [...near, ...beyond(gap.value + guardBand, near.length)],
        noun: 'gaps',
        limit: `At least ${inMm(gap.value)} bare (${gap.document})`,
        working: [],
        sources: [gap.limit.byDefault.from],
        notes: [
          `The side that meets the solder is not in the files: ${layers.includes('bottom') ? 'it is taken to be the bottom' : 'the one side there is, is judged'}.`,
          'A land is bare where the mask is open over its middle; without a mask all are bare. Bare conductors beside lands are not looked for.',
        ],
      })
    },
  })

function beyond(neededMm: number, listed: number): Part[] {
  if (neededMm > GAP_REACH_MM)
    return [
      {
        subject: 'Wider gaps',
        verdict: 'undetermined',
        found: `they are looked for up to ${inMm(GAP_REACH_MM)}, and ${inMm(neededMm)} is asked with its guard band`,
      },
    ]
  if (listed > 0) return []
  return [{ subject: 'Bare lands', verdict: 'meets', found: `no gap is below ${inMm(GAP_REACH_MM)}` }]
}

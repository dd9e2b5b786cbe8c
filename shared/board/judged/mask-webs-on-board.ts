import { maskWebMin } from '@/shared/plan/limits/board-files'
import { maskWebGuard } from '@/shared/plan/limits/specification-guards'
import type { Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import type { Board } from '../board'
import { MASK_WEB_REACH_MM } from '../mask-webs'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'

/** The web of solder mask between every two openings that lie beside each other. */
export const maskWebsOnBoard = ({ maskWebs, masked }: Board) =>
  rule({
    id: 'mask-webs-on-board',
    title: 'Webs of solder mask',
    why: 'A web too narrow comes off the board: it bares what it kept apart, and lies as a sliver where it does harm.',
    formula: 'mask between two openings ≥ least; openings that touch are one',
    stage: 'specification',
    version: 1,
    reads: { min: maskWebMin, guard: maskWebGuard },
    judge({ min, guard }) {
      if (masked.length === 0) return notApplicable('The files have no solder mask with openings.')
      const guardBand = (guard.value / 100) * min.value
      const near = maskWebs.map(({ side, widthMm, at, between }): PlacedPart => ({
        ...partOn({
          subject: `${between.join(' to ')}, ${side}`,
          found: `a web of ${inMm(widthMm)} is left between their openings`,
          margin: {
            found: toMicrometre(widthMm),
            limit: min.value,
            unit: 'mm',
            direction: 'at least',
            guardBand,
          },
        }),
        at,
        layer: side,
        rank: widthMm,
      }))
      return judgedByParts({
        parts: [...near, ...beyond(min.value + guardBand, near.length)],
        noun: 'webs',
        limit: `A web of at least ${inMm(min.value)} (${min.document})`,
        working: [],
        sources: [min.limit.byDefault.from],
        notes: [
          'What a mask file draws is taken to be open. A web that is too narrow is made one opening with its neighbours, or the openings are drawn smaller.',
        ],
      })
    },
  })

function beyond(neededMm: number, listed: number): Part[] {
  if (neededMm > MASK_WEB_REACH_MM)
    return [
      {
        subject: 'Wider webs',
        verdict: 'undetermined',
        found: `they are looked for up to ${inMm(MASK_WEB_REACH_MM)}, and ${inMm(neededMm)} is asked with its guard band`,
      },
    ]
  if (listed > 0) return []
  return [{ subject: 'Webs', verdict: 'meets', found: `none is below ${inMm(MASK_WEB_REACH_MM)}` }]
}

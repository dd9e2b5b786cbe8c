import { leadProjectionClass3Max, leadProjectionMax } from '@/shared/plan/limits/joint-geometry'
import { leadProjection, leadProjectionAtMost } from '@/shared/plan/parameters/joint-geometry'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { productClass } from '@/shared/plan/parameters/programme'

import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, type Part } from '@/shared/rules/finding'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import { fromMemory, published } from '@/shared/sources/provenance'

export const leadProjectionRule = rule({
  id: 'lead-projection',
  title: 'Leads beyond the land',
  why: 'A lead that stands out too far bends, shorts to its neighbour and pierces its packing; one in a bare hole holds by its solder alone unless it is bent over.',
  formula: 'greatest projection ≤ most of the class; in unplated holes of class 3 leads are clinched',
  stage: 'specification',
  version: 1,
  reads: {
    holes: leadHoles,
    atLeast: leadProjection,
    atMost: leadProjectionAtMost,
    grade: productClass,
    max: leadProjectionMax,
    ofClass3: leadProjectionClass3Max,
  },
  judge({ holes, atLeast, atMost, grade, max, ofClass3 }) {
    const limit = `At most ${formatQuantity(max.value, 'mm')} (${max.document}); of class 3 in plated holes ${formatQuantity(ofClass3.value, 'mm')} (${ofClass3.document}), and clinched in unplated ones`
    if (atMost < atLeast)
      return undetermined(
        `Leads are to stand out at least ${formatQuantity(atLeast, 'mm')} and at most ${formatQuantity(atMost, 'mm')}.`,
        ['a greatest length of leads that is not below their least'],
        limit,
      )
    return judgedByParts({
      parts: holes.map((row) =>
        grade === '3' && !row.plated ? clinch(row) : projection(row, atMost, grade === '3' ? ofClass3 : max),
      ),
      noun: 'joint types',
      limit,
      working: [
        { label: 'Longest lead beyond the land', result: formatQuantity(atMost, 'mm') },
        { label: 'Product class', result: grade },
      ],
      sources: [
        max.limit.byDefault.from,
        ofClass3.limit.byDefault.from,
        published(
          'IPC-A-610F (July 2014), Table 7-6 and 7.4.4: leads in unsupported holes are clinched in class 3',
        ),
        fromMemory('IPC-A-610F: no lead may come nearer to its neighbour than the electrical clearance'),
      ],
      notes: ['A clinched lead must keep the electrical clearance as well: bend it along its own conductor.'],
    })
  },
})

function projection(row: LeadHole, atMaxMm: number, limit: GoverningRequirement): Part {
  const part = partOn({
    subject: row.component,
    measured: { plated: row.plated },
    found: `leads stand out at most ${formatQuantity(atMaxMm, 'mm')}`,
    // As cut, a lead may be as long as the limit.
    margin: { found: atMaxMm, limit: limit.value, unit: 'mm', direction: 'at most', guardBand: 0 },
  })
  return part.verdict === 'meets'
    ? part
    : {
        ...part,
        remedy: {
          message: `Cut leads to at most ${formatQuantity(limit.value, 'mm')} beyond the land.`,
          parameter: leadProjectionAtMost.key,
          value: limit.value,
        },
      }
}

/** A lead in an unplated hole of class 3 is held by its clinch, and as long as that takes. */
function clinch({ component: subject, clinched }: LeadHole): Part {
  const measured = { plated: false, clinched: clinched ?? 'not specified' }
  if (clinched === undefined)
    return {
      subject,
      measured,
      verdict: 'undetermined',
      found: 'whether its leads are clinched in their unplated holes is not specified',
    }
  return clinched
    ? { subject, measured, verdict: 'meets', found: 'leads are clinched in their unplated holes' }
    : {
        subject,
        measured,
        verdict: 'fails',
        found: 'leads stand straight in unplated holes',
        remedy: { message: `${subject}: clinch the leads, or plate the holes.` },
      }
}

import { sectionAngleMost, sectionFillLeast, sectionVoidMost } from '@/shared/plan/limits/assessment-proof'
import { microsectionsAsked } from '@/shared/plan/parameters/assessment-proof'
import { formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
} from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, tightest } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { microsections } from '@/shared/rules/assembly-record-sources'
import { measure } from '@/shared/rules/measure'

type Section = RecordOf<'microsection'>

const GUARD_SHARE = 0.05

export const microsectionsSound = rule({
  id: 'microsections-sound',
  title: 'Microsections',
  why: 'Fill, wetting inside the hole, voids and cracks show only in a joint that is cut open. Few are, so those few are looked at hard.',
  formula: 'copper, fill and voids of each section within their limits; no crack',
  stage: 'assessment',
  version: 1,
  reads: {
    asked: optional(microsectionsAsked),
    fill: sectionFillLeast,
    voids: sectionVoidMost,
    angle: sectionAngleMost,
    sections: microsections,
  },
  judge({ asked = 0, fill, voids, angle, sections }): Judged {
    if (asked === 0 && sections.length === 0)
      return notApplicable('No microsection is asked, and none was made.')
    const limit = `${asked} joints cut; fill at least ${formatQuantity(fill.value, '%')} (${namedRuling(fill)}), voids at most ${formatQuantity(voids.value, '%')} (${namedRuling(voids)}), contact angle at most ${formatQuantity(angle.value, '°')} (${namedRuling(angle)}), no crack.`
    if (sections.length === 0)
      return undetermined('No microsection is recorded yet.', [`${asked} microsections`], limit)
    const parts = sections.map((section) => judgeSection(section, fill.value, voids.value, angle.value))
    const short: Part[] =
      sections.length < asked
        ? [
            {
              subject: 'Count',
              about: { matter: 'count' },
              verdict: 'undetermined',
              found: `${sections.length} of ${asked} joints are cut.`,
              remedy: { says: `Cut ${asked - sections.length} more.` },
            },
          ]
        : []
    return judgedByParts({
      parts: [...parts, ...short],
      noun: 'sections',
      limit,
      working: [{ label: 'Joints cut', result: `${sections.length} of ${asked} asked` }],
      sources: [sourceOf(fill), sourceOf(voids), sourceOf(angle)],
      cautions: [
        'Cutting, moulding and etching: guards, extraction and gloves as the materials’ safety data sheets say.',
      ],
    })
  },
})

function judgeSection(section: Section, fill: number, voids: number, angle: number): Part {
  const { assembly, joint, fillPct, voidPct, contactAngleDeg, cracked } = section
  const fillMargin = marginOf(fillPct, fill, '%', 'at least')
  const margins = [
    fillMargin,
    ...(voidPct === undefined ? [] : [marginOf(voidPct, voids, '%', 'at most')]),
    ...(contactAngleDeg === undefined ? [] : [marginOf(contactAngleDeg, angle, '°', 'at most')]),
  ]
  const verdict = cracked ? 'fails' : worstVerdict(margins.map(verdictOn))
  return {
    subject: `${joint} on ${assembly}`,
    about: { joint, assembly },
    verdict,
    measured: {
      fill: measure(fillPct, '%'),
      ...(voidPct !== undefined && { voids: measure(voidPct, '%') }),
      ...(contactAngleDeg !== undefined && { contactAngle: measure(contactAngleDeg, '°') }),
      cracked,
    },
    found: [
      `fill ${formatQuantity(fillPct, '%')}`,
      ...(voidPct === undefined ? [] : [`voids ${formatQuantity(voidPct, '%')}`]),
      ...(contactAngleDeg === undefined ? [] : [`contact angle ${formatQuantity(contactAngleDeg, '°')}`]),
      cracked ? 'cracked' : 'no crack',
    ].join(', '),
    margin: tightest(fillMargin, ...margins),
    ...(verdict === 'fails' && {
      remedy: {
        says: 'Hold back the boards of that run; find whether lead, hole, flux or heat is at fault.',
      },
    }),
  }
}

const marginOf = (
  found: number,
  limit: number,
  unit: Margin['unit'],
  direction: Margin['direction'],
): Margin => ({ found, limit, unit, direction, guardBand: GUARD_SHARE * limit })

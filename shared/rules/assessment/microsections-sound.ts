import { sectionGuard } from '@/shared/plan/limits/assessment-guards'
import {
  sectionAngleMax,
  sectionFillMin,
  sectionIntermetallicMin,
  sectionIntermetallicMax,
  sectionVoidMax,
} from '@/shared/plan/limits/assessment-proof'
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
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { microsections } from '@/shared/rules/assembly-record-sources'
import { measure } from '@/shared/rules/measure'

type Section = RecordOf<'microsection'>

export const microsectionsSound = rule({
  id: 'microsections-sound',
  title: 'Microsections',
  why: 'Fill, wetting inside the hole, voids and cracks show only in a joint that is cut open. Few are, so those few are looked at hard.',
  formula: 'fill, voids, contact angle and intermetallic layer of each section within their limits; no crack',
  stage: 'assessment',
  version: 2,
  reads: {
    asked: optional(microsectionsAsked),
    fill: sectionFillMin,
    voids: sectionVoidMax,
    angle: sectionAngleMax,
    layerMin: sectionIntermetallicMin,
    layerMax: sectionIntermetallicMax,
    guard: sectionGuard,
    sections: microsections,
  },
  judge({ asked = 0, fill, voids, angle, layerMin, layerMax, guard, sections }): Judged {
    if (asked === 0 && sections.length === 0)
      return notApplicable('No microsection is asked, and none was made.')
    const limit = `${asked} joints cut; fill at least ${formatQuantity(fill.value, '%')} (${governingName(fill)}), voids at most ${formatQuantity(voids.value, '%')} (${governingName(voids)}), contact angle at most ${formatQuantity(angle.value, '°')} (${governingName(angle)}), intermetallic layer ${formatQuantity(layerMin.value, 'µm')} (${governingName(layerMin)}) to ${formatQuantity(layerMax.value, 'µm')} (${governingName(layerMax)}), no crack.`
    if (sections.length === 0)
      return undetermined('No microsection is recorded yet.', [`${asked} microsections`], limit)
    const parts = sections.map((section) =>
      judgeSection(section, {
        fill: fill.value,
        voids: voids.value,
        angle: angle.value,
        layerMin: layerMin.value,
        layerMax: layerMax.value,
        guardShare: guard.value / 100,
      }),
    )
    const short: Part[] =
      sections.length < asked
        ? [
            {
              subject: 'Count',
              about: { matter: 'count' },
              verdict: 'undetermined',
              found: `${sections.length} of ${asked} joints are cut.`,
              remedy: { message: `Cut ${asked - sections.length} more.` },
            },
          ]
        : []
    return judgedByParts({
      parts: [...parts, ...short],
      noun: 'sections',
      limit,
      working: [{ label: 'Joints cut', result: `${sections.length} of ${asked} asked` }],
      sources: [fill, voids, angle, layerMin, layerMax].map(sourceOf),
      cautions: [
        'Cutting, moulding and etching: guards, extraction and gloves as the materials’ safety data sheets say.',
      ],
    })
  },
})

interface Asked {
  readonly fill: number
  readonly voids: number
  readonly angle: number
  readonly layerMin: number
  readonly layerMax: number
  readonly guardShare: number
}

/** What a section was cut to show, and what is not filled in of it. */
const notMeasured = ({ voidPct, contactAngleDeg, intermetallicUm }: Section): string[] => [
  ...(voidPct === undefined ? ['voids'] : []),
  ...(contactAngleDeg === undefined ? ['contact angle'] : []),
  ...(intermetallicUm === undefined ? ['intermetallic layer'] : []),
]

function judgeSection(section: Section, asked: Asked): Part {
  const { assembly, joint, fillPct, voidPct, contactAngleDeg, intermetallicUm, cracked } = section
  const on = (
    found: number,
    limit: number,
    unit: Margin['unit'],
    direction: Margin['direction'],
  ): Margin => ({
    found,
    limit,
    unit,
    direction,
    guardBand: asked.guardShare * limit,
  })
  const fillMargin = on(fillPct, asked.fill, '%', 'at least')
  const margins: Margin[] = [
    fillMargin,
    ...(voidPct === undefined ? [] : [on(voidPct, asked.voids, '%', 'at most')]),
    ...(contactAngleDeg === undefined ? [] : [on(contactAngleDeg, asked.angle, '°', 'at most')]),
    ...(intermetallicUm === undefined
      ? []
      : [
          on(intermetallicUm, asked.layerMin, 'µm', 'at least'),
          on(intermetallicUm, asked.layerMax, 'µm', 'at most'),
        ]),
  ]
  const missing = notMeasured(section)
  const verdict = cracked
    ? 'fails'
    : worstVerdict([...margins.map(verdictOn), ...(missing.length > 0 ? (['undetermined'] as const) : [])])
  return {
    subject: `${joint} on ${assembly}`,
    about: { joint, assembly },
    verdict,
    measured: {
      fill: measure(fillPct, '%'),
      ...(voidPct !== undefined && { voids: measure(voidPct, '%') }),
      ...(contactAngleDeg !== undefined && { contactAngle: measure(contactAngleDeg, '°') }),
      ...(intermetallicUm !== undefined && { intermetallic: measure(intermetallicUm, 'µm') }),
      ...(missing.length > 0 && { notMeasured: missing }),
      cracked,
    },
    found: [
      `fill ${formatQuantity(fillPct, '%')}`,
      ...(voidPct === undefined ? [] : [`voids ${formatQuantity(voidPct, '%')}`]),
      ...(contactAngleDeg === undefined ? [] : [`contact angle ${formatQuantity(contactAngleDeg, '°')}`]),
      ...(intermetallicUm === undefined ? [] : [`intermetallic ${formatQuantity(intermetallicUm, 'µm')}`]),
      cracked ? 'cracked' : 'no crack',
      ...(missing.length > 0 ? [`not measured: ${missing.join(', ')}`] : []),
    ].join(', '),
    margin: tightest(fillMargin, ...margins),
    ...(verdict === 'fails' && {
      remedy: {
        message: 'Hold back the boards of that run; find whether lead, hole, flux or heat is at fault.',
      },
    }),
    ...(verdict === 'undetermined' && {
      remedy: { message: `Measure in that section: ${missing.join(', ')}.` },
    }),
  }
}

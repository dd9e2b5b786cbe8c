import { type ReworkedJoint, keyOfJoint, reworkSummary } from '@/shared/inspection/rework-summary'
import { reworkHeatsMax } from '@/shared/plan/limits/assessment-rework'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { defectRecord } from '@/shared/inspection/defect-record'
import { notApplicable } from '@/shared/rules/not-applicable'
import { verdictOn, worstVerdict, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { decidingPart } from '@/shared/rules/parts'
import { inspections } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { electricalTests, reworkRecords } from '@/shared/rules/assembly-record-sources'

export const reworkLimits = rule({
  id: 'rework-limits',
  title: 'Rework: heats of each joint, and cost',
  why: 'Every heat thickens the compound, tires the barrel and loosens the land. A joint mended often is worse than it looks, and its cost belongs to the decision that caused it.',
  formula: 'heats of each joint ≤ most; cost of rework told',
  stage: 'assessment',
  version: 3,
  reads: {
    max: reworkHeatsMax,
    hourCost: optional(workingHourCost),
    rework: reworkRecords,
    inspections,
    tests: electricalTests,
  },
  judge({ max, hourCost, rework, inspections: looks, tests }): Judged {
    const limit = `At most ${formatQuantity(max.value, 'cycles')} of heat on one joint in rework, all visits together (${governingName(max)}).`
    const { joints, visits, minutes, material, cost } = reworkSummary(rework, hourCost)
    const mended = new Set(rework.map(({ assembly, joint }) => keyOfJoint(assembly, joint)))
    const waiting = defectRecord(looks, tests, undefined).defectiveJoints.filter(
      ({ assembly, joint }) => !mended.has(keyOfJoint(assembly, joint)),
    )
    if (joints.length === 0 && waiting.length === 0)
      return notApplicable(
        looks.length === 0
          ? 'No rework is recorded, and no assembly is inspected yet.'
          : 'No joint was found at fault, and none was reworked.',
      )
    const heated = joints.map((joint) => judgeJoint(joint, max.value))
    const parts = [...heated.filter(({ verdict }) => verdict !== 'meets'), ...unmended(waiting)]
    const verdict = worstVerdict([...heated, ...parts].map((part) => part.verdict))
    const worst = decidingPart(parts)
    const price =
      hourCost === undefined
        ? `${formatNumber(minutes / 60, 3)} h, material ${formatQuantity(material, 'currency')}`
        : `${formatNumber(minutes / 60, 3)} h, in all ${formatQuantity(cost, 'currency')}`
    const hottest = joints.reduce((high, { heats }) => Math.max(high, heats), 0)
    return {
      verdict,
      found: `${worst ? `${worst.subject}: ${worst.found} ` : ''}${
        joints.length === 0
          ? 'No joint was reworked.'
          : `${joints.length} joints in ${visits} visits, at most ${hottest} heats each; ${price}.`
      }`,
      limit,
      measured: {
        joints: count(joints.length, 'joints'),
        visits: count(visits),
        time: measure(minutes, 'min'),
        material: measure(material, 'currency'),
        ...(hourCost !== undefined && { cost: measure(cost, 'currency') }),
      },
      margin: { found: hottest, limit: max.value, unit: 'cycles', direction: 'at most', guardBand: 0 },
      working: [
        {
          label: 'Cost of rework',
          formula: 'hours · cost of an hour + material',
          numbers: `${formatNumber(minutes / 60)} h · ${hourCost === undefined ? 'not stated' : hourCost} + ${formatNumber(material)}`,
          result: price,
        },
      ],
      sources: [sourceOf(max)],
      remedy: worst?.remedy,
      ...(parts.length > 0 && { parts }),
      cautions: ['Hot metal, and fume at the face: use extraction; wash hands after handling leaded solder.'],
    }
  },
})

/** Joints found at fault of which nothing is told since: no limit is broken, and nobody may rest on it. */
function unmended(waiting: readonly { readonly assembly: string; readonly joint: string }[]): Part[] {
  const first = waiting[0]
  if (!first) return []
  return [
    {
      subject: 'Defects without rework',
      about: { matter: 'defects without rework' },
      verdict: 'marginal',
      measured: { joints: count(waiting.length, 'joints'), first: first.joint, on: first.assembly },
      found: `${waiting.length} defective joints have no rework on record, such as ${first.joint} on ${first.assembly}: mended, scrapped or let pass?`,
      remedy: {
        message: 'Record the rework of each; where an assembly was scrapped or let pass, quality says so.',
      },
    },
  ]
}

function judgeJoint({ assembly, joint, heats, visits }: ReworkedJoint, max: number): Part {
  const margin: Margin = { found: heats, limit: max, unit: 'cycles', direction: 'at most', guardBand: 0 }
  const verdict = verdictOn(margin)
  return {
    subject: `${joint} on ${assembly}`,
    about: { joint, assembly },
    verdict,
    measured: { visits: count(visits) },
    found: `heated ${heats} times in ${visits} visits.`,
    margin,
    ...(verdict === 'fails' && {
      remedy: {
        message: `Set ${assembly} aside: scrap it, or let design and quality grant a concession that names ${joint}.`,
      },
    }),
  }
}

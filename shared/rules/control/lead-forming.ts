import { leastBend } from '@/shared/physics/lead-bend'
import { leadBendEdition } from '@/shared/plan/parameters/control-handling'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, worstVerdict, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, tightest } from '@/shared/rules/parts'
import { recordsOf } from '@/shared/rules/record-source'
import type { RecordOf } from '@/shared/records/record-kinds'
import { optional, rule } from '@/shared/rules/rule'

type Check = RecordOf<'lead-forming'>

/** Within a twentieth of the least is marginal: calipers read no finer on a bend. */
const GUARD_SHARE = 0.05

export const leadFormingRule = rule({
  id: 'lead-forming',
  title: 'Component leads formed without harm',
  why: 'A bend too sharp or too near the body cracks the plating, the lead or the seal. None of it shows once the joint is soldered.',
  stage: 'control',
  version: 1,
  reads: { edition: optional(leadBendEdition), checks: recordsOf('lead-forming', 'lead forming checks') },
  judge({ edition, checks }): Judged {
    if (checks.length === 0)
      return notApplicable(
        'No lead forming check is recorded: where leads are bent here, record one for each part.',
      )
    const first = leastBend(checks[0]!.leadDiameterMm, edition)
    return judgedByParts({
      parts: checks.map((check) => judgeCheck(check, leastBend(check.leadDiameterMm, edition))),
      noun: 'checks',
      limit: `Inside radius by ${first.radiusFrom}; straight before the bend by ${first.straightFrom}; no nick, crack or broken plating.`,
      working: [
        {
          label: `${checks[0]!.part}: least bend`,
          numbers: `lead of ${formatQuantity(checks[0]!.leadDiameterMm, 'mm')}`,
          result: `radius ${formatQuantity(first.radiusMm, 'mm')}, straight ${formatQuantity(first.straightMm, 'mm')}`,
        },
      ],
      sources: [
        { cite: first.radiusFrom, how: 'published' },
        { cite: first.straightFrom, how: 'published' },
      ],
      cautions: ['Wear eye protection when leads are cut: the ends fly.'],
    })
  },
})

function judgeCheck(check: Check, least: ReturnType<typeof leastBend>): Part {
  const { part, checkedOn, insideRadiusMm, straightMm, marked } = check
  const radius = marginOf(insideRadiusMm, least.radiusMm)
  const straight = marginOf(straightMm, least.straightMm)
  const verdict = marked ? 'fails' : worstVerdict([verdictOn(radius), verdictOn(straight)])
  return {
    subject: `${part}, ${checkedOn}`,
    verdict,
    found: `radius ${formatQuantity(insideRadiusMm, 'mm')} (at least ${formatQuantity(least.radiusMm, 'mm')}), straight ${formatQuantity(straightMm, 'mm')} (at least ${formatQuantity(least.straightMm, 'mm')})${marked ? ', lead marked' : ''}.`,
    margin: tightest(radius, straight),
    ...(verdict === 'fails' && {
      remedy: {
        says: `Form over a tool of radius ${formatQuantity(least.radiusMm, 'mm')} or more, clamped ${formatQuantity(least.straightMm, 'mm')} from the body, without sharp jaws; do not use the leads already harmed.`,
      },
    }),
  }
}

const marginOf = (found: number, limit: number): Margin => ({
  found,
  limit,
  unit: 'mm',
  direction: 'at least',
  guardBand: GUARD_SHARE * limit,
})

import { distinctSources } from '@/shared/sources/distinct-sources'
import { minBend } from '@/shared/physics/lead-bend'
import { leadBendGuard } from '@/shared/plan/limits/guard-bands'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { leadBendEdition, leadsFormedHere } from '@/shared/plan/parameters/control-handling'
import { formatQuantity } from '@/shared/quantity/format'
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
import { recordsOf } from '@/shared/rules/record-source'
import type { RecordOf } from '@/shared/records/record-kinds'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { measure } from '@/shared/rules/measure'

type Check = RecordOf<'lead-forming'>

export const leadFormingRule = rule({
  id: 'lead-forming',
  title: 'Component leads formed without harm',
  why: 'A bend too sharp or too near the body cracks the plating, the lead or the seal. None of it shows once the joint is soldered.',
  formula: 'bend radius ≥ least by diameter; straight length ≥ least; no lead marked',
  stage: 'control',
  version: 3,
  reads: {
    formed: optional(leadsFormedHere),
    holes: optional(leadHoles),
    edition: optional(leadBendEdition),
    guard: leadBendGuard,
    checks: recordsOf('lead-forming', 'lead forming checks'),
  },
  judge({ formed, holes, edition, guard, checks }): Judged {
    if (checks.length === 0) {
      if (formed === false) return notApplicable('No component lead is bent here.')
      return formed === undefined
        ? undetermined(
            holes === undefined
              ? 'No component is specified yet, and nothing says whether leads are bent here.'
              : 'Components with leads are specified, and nothing says whether their leads are bent here.',
            [leadsFormedHere.label],
          )
        : undetermined('No lead forming check is recorded yet.', [
            'a lead forming check of each part that is bent',
          ])
    }
    const first = minBend(checks[0]!.leadDiameterMm, edition)
    return judgedByParts({
      parts: checks.map((check) =>
        judgeCheck(check, minBend(check.leadDiameterMm, edition), guard.value / 100),
      ),
      noun: 'checks',
      limit: `Inside radius by ${first.radiusFrom.edition}; straight before the bend by ${first.straightFrom.edition}; no nick, crack or broken plating.`,
      working: [
        {
          label: `${checks[0]!.part}: least bend`,
          numbers: `lead of ${formatQuantity(checks[0]!.leadDiameterMm, 'mm')}`,
          result: `radius ${formatQuantity(first.radiusMm, 'mm')}, straight ${formatQuantity(first.straightMm, 'mm')}`,
        },
      ],
      sources: distinctSources([first.radiusFrom.source, first.straightFrom.source, sourceOf(guard)]),
      cautions: ['Wear eye protection when leads are cut: the ends fly.'],
    })
  },
})

function judgeCheck(check: Check, min: ReturnType<typeof minBend>, guardShare: number): Part {
  const { part, checkedOn, insideRadiusMm, straightMm, marked } = check
  const radius = marginOf(insideRadiusMm, min.radiusMm, guardShare)
  const straight = marginOf(straightMm, min.straightMm, guardShare)
  const verdict = marked ? 'fails' : worstVerdict([verdictOn(radius), verdictOn(straight)])
  return {
    subject: `${part}, ${checkedOn}`,
    about: { part, checkedOn },
    verdict,
    measured: {
      radius: measure(insideRadiusMm, 'mm'),
      minRadius: measure(min.radiusMm, 'mm'),
      straight: measure(straightMm, 'mm'),
      minStraight: measure(min.straightMm, 'mm'),
      marked,
    },
    found: `radius ${formatQuantity(insideRadiusMm, 'mm')} (at least ${formatQuantity(min.radiusMm, 'mm')}), straight ${formatQuantity(straightMm, 'mm')} (at least ${formatQuantity(min.straightMm, 'mm')})${marked ? ', lead marked' : ''}.`,
    margin: tightest(radius, straight),
    ...(verdict === 'fails' && {
      remedy: {
        message: `Form over a tool of radius ${formatQuantity(min.radiusMm, 'mm')} or more, clamped ${formatQuantity(min.straightMm, 'mm')} from the body, without sharp jaws; do not use the leads already harmed.`,
      },
    }),
  }
}

const marginOf = (found: number, limit: number, guardShare: number): Margin => ({
  found,
  limit,
  unit: 'mm',
  direction: 'at least',
  guardBand: guardShare * limit,
})

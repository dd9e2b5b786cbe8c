import { magnificationFor } from '@/shared/materials/inspection-magnification'
import { magnificationMax } from '@/shared/plan/limits/assessment-inspection'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { inspections } from '@/shared/rules/record-source'
import { decidingPart } from '@/shared/rules/parts'
import { rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'

export const inspectionMagnification = rule({
  id: 'inspection-magnification',
  title: 'Magnification of inspection',
  why: 'Too little and defects hide; too much and sound joints look bad and are reworked, which harms them.',
  formula: 'power used within what the narrowest land asks',
  stage: 'assessment',
  version: 2,
  reads: { holes: leadHoles, max: magnificationMax, inspections },
  judge({ holes, max, inspections: looks }): Judged {
    const narrowest = Math.min(...holes.map(({ landMm }) => landMm))
    const row = magnificationFor(narrowest)
    const limit = `At least ${formatQuantity(row.min, '×')} for lands of ${formatQuantity(narrowest, 'mm')} (${row.source.cite}), at most ${formatQuantity(max.value, '×')} (${governingName(max)}).`
    const sources = [row.source, sourceOf(max)]
    if (row.min > max.value)
      return {
        verdict: 'fails',
        measured: {
          land: measure(narrowest, 'mm'),
          asked: measure(row.min, '×'),
          allowed: measure(max.value, '×'),
        },
        found: `Lands of ${formatQuantity(narrowest, 'mm')} cannot be inspected within the limit.`,
        limit,
        working: [],
        sources,
        remedy: {
          message: `State a requirement of ${formatQuantity(row.max, '×')} for these lands, or widen them.`,
        },
      }
    if (looks.length === 0)
      return undetermined('No inspection is recorded yet.', ['inspections of assemblies'], limit)
    const guide = Math.min(row.max, max.value)
    const over = looks.filter(({ magnification }) => !(magnification <= max.value))
    const under = looks.filter(({ magnification }) => !(magnification >= row.min))
    const strong = looks.filter(({ magnification }) => magnification > guide && magnification <= max.value)
    const parts: Part[] = [
      group(
        'too strong',
        over,
        'fails',
        max.value,
        `above ${formatQuantity(max.value, '×')}`,
        'Look again at the joints rejected: at this power sound joints look bad. Use more only as referee.',
      ),
      group(
        'too weak',
        under,
        'fails',
        row.min,
        `below ${formatQuantity(row.min, '×')}`,
        'Look at these assemblies again with enough magnification.',
      ),
      group(
        'stronger than the table',
        strong,
        'marginal',
        guide,
        `above the ${formatQuantity(guide, '×')} that the land width asks for`,
        undefined,
      ),
    ].flatMap((part) => part ?? [])
    const worst = decidingPart(parts)
    const powers = looks.map(({ magnification }) => magnification)
    const lowest = powers.reduce((low, power) => Math.min(low, power), Infinity)
    const highest = powers.reduce((high, power) => Math.max(high, power), -Infinity)
    const strongSide = worst?.about?.['magnification'] !== 'too weak'
    return {
      verdict: worst?.verdict ?? 'meets',
      found: worst ? worst.found : `All ${looks.length} inspections were made at ${lowest} to ${highest}×.`,
      limit,
      measured: {
        inspections: count(looks.length),
        lowest: measure(lowest, '×'),
        highest: measure(highest, '×'),
      },
      margin: strongSide
        ? { found: highest, limit: max.value, unit: '×', direction: 'at most', guardBand: 0 }
        : { found: lowest, limit: row.min, unit: '×', direction: 'at least', guardBand: 0 },
      working: [{ label: 'Narrowest land', result: formatQuantity(narrowest, 'mm') }],
      sources,
      remedy: worst?.remedy,
      parts: parts.length > 0 ? parts : undefined,
      notes: [
        `To settle a doubt already raised, up to ${formatQuantity(row.referee, '×')} may be used as referee; record the inspection at the power that raised it.`,
      ],
    }
  },
})

function group(
  subject: string,
  looks: readonly { readonly assembly: string; readonly magnification: number }[],
  verdict: Part['verdict'],
  border: number,
  how: string,
  message: string | undefined,
): Part | undefined {
  const first = looks[0]
  if (!first) return undefined
  return {
    subject,
    about: { magnification: subject },
    verdict,
    measured: {
      inspections: count(looks.length),
      first: first.assembly,
      at: measure(first.magnification, '×'),
      border: measure(border, '×'),
    },
    found: `${looks.length} inspections were made ${how}, such as ${first.assembly} at ${first.magnification}×.`,
    remedy: message === undefined ? undefined : { message },
  }
}

import { foldedList } from '@/shared/quantity/folded-names'
import { boardJoints } from '@/shared/plan/board-joints'
import { inspectedJointsMin } from '@/shared/plan/limits/assessment-inspection'
import { inspectedAssembliesShare } from '@/shared/plan/parameters/assessment-inspection'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import { assembliesMade } from '@/shared/records/soldering-work'
import type { Inspection } from '@/shared/records/inspection'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { inspections } from '@/shared/rules/record-source'
import { worstPart } from '@/shared/rules/worst-part'
import { rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'

export const inspectionCoverage = rule({
  id: 'inspection-coverage',
  title: 'How much was inspected',
  why: 'A plan to inspect all, or a share, is worth what was really looked at: assemblies of those made, joints of those on the board.',
  formula: 'joints inspected, as a union of looks, ≥ share · made',
  stage: 'assessment',
  version: 4,
  reads: {
    share: inspectedAssembliesShare,
    holes: leadHoles,
    surfaceMount: surfaceMountJoints,
    jointsMin: inspectedJointsMin,
    inspections,
    runs: solderingRuns,
  },
  judge({ share, holes, surfaceMount, jointsMin, inspections: looks, runs }): Judged {
    const joints = boardJoints(holes, surfaceMount).total
    const limit = `${formatQuantity(share, '%')} of the assemblies made (inspection plan), on each ${formatQuantity(jointsMin.value, '%')} of its ${joints} joints (${governingName(jointsMin)}).`
    const made = assembliesMade(runs)
    if (made === 0)
      return undetermined(
        'No assembly is recorded as soldered yet: record the soldering runs.',
        ['soldering runs'],
        limit,
      )
    const seenOn = jointsSeenByAssembly(looks, joints)
    const inspected = seenOn.size
    const needed = Math.ceil((share / 100) * made - 1e-9)
    const assemblies: Part & { margin: Margin } = {
      subject: 'Assemblies',
      about: { share: 'assemblies' },
      measured: { made: count(made, 'boards') },
      verdict: inspected >= needed ? 'meets' : 'fails',
      found: `${inspected} of ${made} made were inspected; ${needed} are needed.`,
      margin: { found: inspected, limit: needed, unit: 'boards', direction: 'at least', guardBand: 0 },
      remedy: inspected >= needed ? undefined : { message: `Inspect ${needed - inspected} more assemblies.` },
    }
    const marginOf = (seen: number): Margin => ({
      found: (seen / joints) * 100,
      limit: jointsMin.value,
      unit: '%',
      direction: 'at least',
      guardBand: 0,
    })
    const short = [...seenOn.values()].filter(({ seen }) => verdictOn(marginOf(seen)) !== 'meets')
    const min = [...seenOn.values()].reduce((low, { seen }) => Math.min(low, seen), Infinity)
    const parts: Part[] = [assemblies]
    if (inspected > 0) {
      const margin = marginOf(min)
      parts.push({
        subject: 'Joints',
        about: { share: 'joints' },
        verdict: verdictOn(margin),
        measured: {
          joints: count(joints, 'joints'),
          fewestSeen: count(min, 'joints'),
          short: count(short.length, 'boards'),
          ...(short[0] && { first: short[0].name, seenOnFirst: count(short[0].seen, 'joints') }),
        },
        found:
          short.length === 0
            ? `on every assembly inspected, ${min} or more of ${joints} joints were seen.`
            : `on ${short.length} assemblies too few joints were seen, on ${short[0]!.name} ${short[0]!.seen} of ${joints} (${formatAgainst((short[0]!.seen / joints) * 100, jointsMin.value, '%').found}).`,
        margin,
        remedy:
          short.length === 0
            ? undefined
            : {
                message: `Look at the joints left out on ${foldedList(short.map(({ name }) => name))}.`,
              },
      })
    }
    const worst = worstPart(parts)
    const { verdict } = worst
    return {
      verdict,
      found: `${worst.subject}: ${worst.found}`,
      limit,
      margin: worst.margin,
      working: [
        {
          label: 'Assemblies needed',
          formula: 'share · made, rounded up',
          numbers: `${share} % · ${made}`,
          result: formatQuantity(needed, 'boards'),
        },
      ],
      sources: [sourceOf(jointsMin)],
      remedy: worst.remedy,
      parts,
      notes: [
        'Which joints a partial look saw is not recorded: of several looks at one assembly the largest counts.',
        'Assemblies made are those of the soldering runs: of several kinds of work on one board, the kind with the most counts.',
      ],
    }
  },
})

/** Joints surely seen on each assembly: those of its largest look, for two partial looks may have seen the same. */
function jointsSeenByAssembly(
  looks: readonly Inspection[],
  joints: number,
): Map<string, { name: string; seen: number }> {
  const seenOn = new Map<string, { name: string; seen: number }>()
  for (const { assembly, jointsSeen } of looks) {
    const key = assembly.trim().toLowerCase()
    const known = seenOn.get(key)
    if (known) known.seen = Math.max(known.seen, Math.min(joints, jointsSeen))
    else seenOn.set(key, { name: assembly, seen: Math.min(joints, jointsSeen) })
  }
  return seenOn
}

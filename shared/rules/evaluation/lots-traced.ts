import { foldedList } from '@/shared/quantity/folded-names'
import { commonPractice } from '@/shared/sources/provenance'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import type { Lot } from '@/shared/records/lot'
import { kindAndPart, lotName, aboutLot } from '@/shared/records/lot-identity'
import type { Inspection } from '@/shared/records/inspection'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { count } from '@/shared/rules/measure'
import { inspections, lots } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { memory } from '@/shared/memo'
import { spokenByWorst } from '@/shared/rules/worst-part'

const SOURCE = commonPractice('Traceability from lot to assembly and back')
const LIMIT_SAYS = 'no assembly from a lot that may not be used, and every assembly traced to its lots'

/** Parts that an assembly holds and must be traced to; laminate and coupons are not in it as such. */
const TRACED_KINDS: readonly string[] = ['bare board', 'component']

export const lotsTraced = rule({
  id: 'lots-traced',
  title: 'Lots traced into assemblies',
  why: 'When a lot turns out bad, somebody has to know which boards to call back; when a board fails, which lots to suspect.',
  formula: 'every lot that was soldered is named by runs, and every assembly names its lots',
  stage: 'evaluation',
  version: 2,
  reads: { lots, inspections, needed: optional(lotsNeeded) },
  judge({ lots: all, inspections: looks, needed }): Judged {
    const assemblies = assembliesIn(all, looks)
    if (assemblies.size === 0) return notApplicable('No assembly is recorded: nothing to trace.')
    const parts = [...all.flatMap(wrongUse), ...untraced(all, assemblies, needed ?? [])]
    const waiting = all.filter(
      ({ disposition, usedIn }) => disposition?.verdict === 'accept' && usedIn.length === 0,
    )
    const notes =
      waiting.length > 0
        ? [`Accepted and in no assembly yet: ${waiting.map(({ code }) => code).join(', ')}.`]
        : []
    const base = {
      measured: { assemblies: count(assemblies.size) },
      limit: LIMIT_SAYS,
      working: [
        {
          label: 'Assemblies and lots',
          numbers: `${assemblies.size} assemblies, ${all.filter(({ usedIn }) => usedIn.length > 0).length} lots used`,
          result: `${parts.length} not as they should be`,
        },
      ],
      sources: [SOURCE],
      notes,
    }
    if (parts.length === 0 && tracedParts(needed ?? []).size === 0) {
      return undetermined(
        `${assemblies.size === 1 ? 'An assembly is' : `${assemblies.size} assemblies are`} recorded, and no board or component is named that they must be traced to.`,
        [lotsNeeded.label],
        LIMIT_SAYS,
      )
    }
    if (parts.length === 0) {
      return {
        verdict: 'meets',
        found: `Every assembly (${assemblies.size}) is traced to lots that may be used.`,
        ...base,
      }
    }
    return { ...spokenByWorst(parts), ...base }
  },
})

const rememberedAssemblies = memory<readonly Lot[], ReadonlySet<string>>(1)
/** Every assembly that a lot went into or that was inspected. */
const assembliesIn = (all: readonly Lot[], looks: readonly Inspection[]): ReadonlySet<string> =>
  rememberedAssemblies(
    all,
    [looks],
    () => new Set([...all.flatMap(({ usedIn }) => usedIn), ...looks.map(({ assembly }) => assembly)]),
  )

/** A used lot that should not be, or only just, in an assembly. */
function wrongUse(lot: Lot): Part[] {
  if (lot.usedIn.length === 0) return []
  const common = {
    subject: lotName(lot),
    about: aboutLot(lot),
    measured: { usedIn: lot.usedIn, disposition: lot.disposition?.verdict ?? 'none' },
  }
  const into = `in ${foldedList(lot.usedIn)}`
  if (lot.disposition === null) {
    return [
      {
        ...common,
        verdict: 'fails',
        found: `used ${into} before quality disposed of it.`,
        remedy: { message: 'Dispose of the lot on its results; until then hold the assemblies.' },
      },
    ]
  }
  if (lot.disposition.verdict === 'reject') {
    return [
      {
        ...common,
        verdict: 'fails',
        found: `rejected, and used ${into}.`,
        remedy: {
          message: 'Withdraw the assemblies, or have them allowed by concession of design and quality.',
        },
      },
    ]
  }
  if (lot.disposition.verdict === 'use under concession') {
    return [
      {
        ...common,
        measured: { ...common.measured, reason: lot.disposition.reason },
        verdict: 'marginal',
        found: `used ${into} under concession: ${lot.disposition.reason}`,
      },
    ]
  }
  return []
}

/** The parts that every assembly must be traced to, by kind and name. */
export const tracedParts = (
  needed: readonly { readonly kind: string; readonly part: string }[],
): ReadonlyMap<string, string> =>
  new Map(
    needed
      .filter(({ kind }) => TRACED_KINDS.includes(kind))
      .map(({ kind, part }) => [kindAndPart({ kind, part }), part]),
  )

const rememberedTraced = memory<readonly Lot[], ReadonlyMap<string, ReadonlySet<string>>>(1)
/** By part, the assemblies that some lot of it went into. */
const tracedAssemblies = (all: readonly Lot[]): ReadonlyMap<string, ReadonlySet<string>> =>
  rememberedTraced(all, [], () => {
    const traced = new Map<string, Set<string>>()
    for (const lot of all) {
      const key = kindAndPart(lot)
      const known = traced.get(key) ?? new Set<string>()
      traced.set(key, known)
      for (const assembly of lot.usedIn) known.add(assembly)
    }
    return traced
  })

/** Assemblies of which some part cannot be traced to a lot. */
function untraced(
  all: readonly Lot[],
  assemblies: ReadonlySet<string>,
  needed: readonly { readonly kind: string; readonly part: string }[],
): Part[] {
  const traced = tracedAssemblies(all)
  return [...tracedParts(needed)].flatMap(([key, part]) => {
    const known = traced.get(key)
    const missing = [...assemblies].filter((assembly) => !known?.has(assembly))
    if (missing.length === 0) return []
    return [
      {
        subject: part,
        verdict: 'undetermined' as const,
        found: `${foldedList(missing)} ${missing.length === 1 ? 'is' : 'are'} traced to no lot of it.`,
        remedy: { message: 'Enter on the lot page which assemblies the lot went into.' },
      },
    ]
  })
}

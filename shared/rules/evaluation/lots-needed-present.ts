import { commonPractice } from '@/shared/sources/provenance'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { ValueOf } from '@/shared/plan/parameter'
import type { Lot } from '@/shared/records/lot'
import { isUsable, kindAndPart, namesComponent } from '@/shared/records/lot-identity'
import { isSolderabilityMethod } from '@/shared/methods/test-methods'
import type { Judged, Part } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { countingReads, type CountingInputs } from '@/shared/lot-tests/counted-tests'
import { testInWords, testKey, untried } from '@/shared/lot-tests/tests-asked'
import { optional, rule } from '@/shared/rules/rule'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { groupedBy } from '@/shared/grouped-by'

type Needed = ValueOf<typeof lotsNeeded>

const SOURCE = commonPractice('Every part whose surface a joint rests on is evaluated before soldering')
const SOLDERED_KINDS: readonly string[] = ['bare board', 'component']

export const lotsNeededPresent = rule({
  id: 'lots-needed-present',
  title: 'Every part evaluated',
  why: 'A joint has two surfaces. One component type that nobody tested is enough to spoil every board it goes into.',
  formula: 'a lot of every part that is asked for, tested by the method asked',
  stage: 'evaluation',
  version: 3,
  reads: {
    ...countingReads,
    conditions: optional(testConditions),
    needed: lotsNeeded,
    holes: optional(leadHoles),
  },
  judge(inputs): Judged {
    const { lots: all, needed, holes } = inputs
    const byPart = groupedBy(all, kindAndPart)
    const rows = partsOf(needed)
    const parts = [
      ...rows.map((row) => judgePart(row, byPart.get(kindAndPart(row)) ?? [], inputs)),
      ...boardMissing(needed),
      ...componentsMissing(needed, holes ?? []),
    ]
    const spoken = spokenByWorst(parts)
    return {
      ...spoken,
      found:
        spoken.verdict === 'meets'
          ? `Every part (${rows.length}) has a tested lot that may be used.`
          : spoken.found,
      measured: { parts: count(rows.length) },
      limit: 'a lot of every part, tested as planned, that quality accepted',
      working: [
        {
          label: 'Parts with a usable lot',
          numbers: `${parts.filter(({ verdict }) => verdict === 'meets').length} of ${parts.length}`,
          result: spoken.verdict,
        },
      ],
      sources: [SOURCE],
    }
  },
})

interface PlannedPart {
  readonly part: string
  readonly kind: string
  readonly methods: readonly string[]
}

function partsOf(needed: Needed): PlannedPart[] {
  const planned = new Map<string, { part: string; kind: string; methods: string[] }>()
  for (const { part, kind, method } of needed) {
    const known = planned.get(kindAndPart({ kind, part })) ?? { part, kind, methods: [] }
    known.methods.push(method)
    planned.set(kindAndPart({ kind, part }), known)
  }
  return [...planned.values()]
}

function judgePart({ part, kind, methods }: PlannedPart, own: readonly Lot[], inputs: CountingInputs): Part {
  const common = { subject: `${part} (${kind})`, about: { part, kind } }
  const hasSolderability = methods.some(isSolderabilityMethod)
  if (SOLDERED_KINDS.includes(kind) && !hasSolderability) {
    return {
      ...common,
      verdict: 'undetermined',
      found: 'is soldered, and the plan asks for no solderability test of it.',
      remedy: { message: 'Add a row with a solderability test for this part.' },
    }
  }
  if (own.length === 0) {
    return {
      ...common,
      verdict: 'undetermined',
      found: 'no lot is recorded.',
      remedy: { message: 'Record the lot when it is received.' },
    }
  }
  const usable = own.filter(isUsable)
  if (usable.length === 0) {
    const codes = own.map(({ code }) => code).join(', ')
    return {
      ...common,
      verdict: 'fails',
      measured: { rejected: own.map(({ code }) => code) },
      found: `every lot was rejected (${codes}).`,
      remedy: { message: 'Obtain and test another lot, or another supplier’s.' },
    }
  }
  const short = usable.flatMap((lot) => {
    const missing = untried(lot, methods, inputs)
    return missing.length > 0 ? [{ lot, missing }] : []
  })
  if (short.length > 0) {
    return {
      ...common,
      verdict: 'undetermined',
      measured: Object.fromEntries(short.map(({ lot, missing }) => [lot.code, missing.map(testKey)])),
      found: `${short.map(({ lot, missing }) => `lot ${lot.code} has no result that counts by ${missing.map(testInWords).join(', ')}`).join('; ')}.`,
      remedy: { message: 'Test it, or reject the lot.' },
    }
  }
  const accepted = usable.filter(({ disposition }) => disposition !== null)
  if (accepted.length === 0) {
    return {
      ...common,
      verdict: 'undetermined',
      found: `${usable.map(({ code }) => `lot ${code}`).join(', ')} tested and not yet disposed of by quality.`,
      remedy: { message: 'Accept, reject, or allow it under concession.' },
    }
  }
  return {
    ...common,
    verdict: 'meets',
    measured: { usable: accepted.map(({ code }) => code) },
    found: `${accepted.map(({ code }) => `lot ${code}`).join(', ')} may be used.`,
  }
}

/** There is always a board. */
function boardMissing(needed: Needed): Part[] {
  if (needed.some(({ kind }) => kind === 'bare board')) return []
  return [
    {
      subject: 'bare board',
      about: { kind: 'bare board' },
      verdict: 'undetermined',
      found: 'is in no row of the parts to be evaluated.',
      remedy: { message: 'Add a row for the bare board with its solderability test.' },
    },
  ]
}

/** Components of the hole table that the evaluation forgot. */
function componentsMissing(needed: Needed, holes: readonly { readonly component: string }[]): Part[] {
  const planned = needed.filter(({ kind }) => kind === 'component')
  const components = [...new Set(holes.map(({ component }) => component))]
  return components
    .filter((component) => !planned.some(({ part }) => namesComponent(part, component)))
    .map((component) => ({
      subject: component,
      verdict: 'undetermined',
      found: 'stands in the hole table and in no row of the parts to be evaluated.',
      remedy: { message: 'Add a row that names it, with its solderability test.' },
    }))
}

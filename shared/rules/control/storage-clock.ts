import { storageClockGuard } from '@/shared/plan/limits/guard-bands'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { reaffirmationAgeMax } from '@/shared/plan/limits/evaluation-storage'
import { daysBetween } from '@/shared/quantity/calendar'
import { formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { aboutLot, isUsable, lotName } from '@/shared/records/lot-identity'
import {
  undetermined,
  verdictOn,
  type Judged,
  type Margin,
  type Part,
  type Measured,
} from '@/shared/rules/finding'
import { decidingPart } from '@/shared/rules/parts'
import { spokenByWorst } from '@/shared/rules/worst-part'
import {
  passingReads,
  solderabilityResults,
  type SolderabilityResult,
} from '@/shared/lot-tests/solderability-results'
import type { SolderingRun } from '@/shared/records/soldering-work'
import { runsInWords, runsMeasured } from '@/shared/logs/runs-held'
import { lots, recordsOf } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import {
  codeKey,
  lotCodes,
  lotsUsed,
  monthsAfter,
  monthsFor,
  startOfStorage,
  storageReads,
} from '@/shared/storage/storage-time'

export const storageClockRule = rule({
  id: 'storage-clock',
  title: 'Time from evaluation to soldering',
  why: 'What wetted well when it was tested goes on ageing. The clock runs from making and from the test, and stops when the solder flows.',
  formula: 'days from the newest passing test to soldering ≤ months allowed',
  stage: 'control',
  version: 6,
  reads: {
    ...storageReads,
    ...passingReads,
    testedMax: reaffirmationAgeMax,
    guard: storageClockGuard,
    lots,
    runs: recordsOf('soldering-run', 'soldering runs'),
  },
  judge(inputs): Judged {
    const { boardMonths, partMonths, testedMax, lots: onFile, runs } = inputs
    const limit = `Soldered within ${formatQuantity(boardMonths, 'months')} (boards) or ${formatQuantity(partMonths, 'months')} (components) in store, and within ${formatQuantity(testedMax.value, 'days')} of the newest solderability test it passed (${governingName(testedMax)}).`
    const used = lotsUsed(runs)
    if (used.length === 0)
      return undetermined(
        'No soldering run names the lots that went into it: name them, separated by commas.',
        ['soldering runs with their lots'],
        limit,
      )
    const byCode = new Map(onFile.map((lot) => [codeKey(lot.code), lot]))
    const parts = used.flatMap(({ code, days }): Part[] => {
      const lot = byCode.get(codeKey(code))
      if (!lot) return [unknownLot(code, days[0]!)]
      const months = monthsFor(lot, boardMonths, partMonths)
      return months === undefined
        ? []
        : [judgeLot(lot, days, months, solderabilityResults(lot, inputs), inputs)]
    })
    const unnamed = runs.filter((run) => MADE_OF_LOTS.has(run.skill) && lotCodes(run.lots).length === 0)
    const all = unnamed.length > 0 ? [...parts, runsWithoutLots(unnamed)] : parts
    if (parts.length === 0)
      return undetermined(
        'The soldering runs name no lot of boards or components.',
        ['the lots of boards and components in each soldering run'],
        limit,
      )
    return {
      ...spokenByWorst(all),
      limit,
      working: [
        { label: 'Lots soldered', result: `${parts.length} of boards and components in ${runs.length} runs` },
      ],
      sources: [sourceOf(testedMax), sourceOf(inputs.guard)],
      notes: [
        'A date code of four figures is read as year and week of making; without one the clock starts at receipt, which is later than the truth.',
      ],
    }
  },
})

/** Work that takes boards and components; rework and cleaning may need none. */
const MADE_OF_LOTS: ReadonlySet<SolderingRun['skill']> = new Set([
  'hand-soldering',
  'machine-soldering',
  'reflow-soldering',
])

const runsWithoutLots = (runs: readonly SolderingRun[]): Part => ({
  subject: 'The lots of every soldering run',
  about: { matter: 'runs without lots' },
  verdict: 'undetermined',
  measured: { runs: runsMeasured(runs) },
  found: `${runsInWords(runs)}: no lot is named.`,
  remedy: { message: 'Record the runs again with the codes of the lots that went into them.' },
})

const unknownLot = (code: string, day: string): Part => ({
  subject: `Lot ${code} on file`,
  about: { lot: code },
  verdict: 'undetermined',
  found: `soldered on ${day}, but no lot of that code is on file.`,
  remedy: { message: `Enter lot ${code} with its tests, or put the code in the soldering run right.` },
})

function judgeLot(
  lot: Lot,
  days: readonly string[],
  months: number,
  results: readonly SolderabilityResult[],
  { testedMax, guard }: { readonly testedMax: GoverningRequirement; readonly guard: GoverningRequirement },
): Part {
  const named = { subject: lotName(lot), about: aboutLot(lot) }
  const first = days[0]!
  if (!isUsable(lot))
    return {
      ...named,
      verdict: 'fails',
      measured: { disposition: 'reject', solderedOn: first },
      found: `soldered on ${first} although it was rejected.`,
      remedy: { message: 'Set the assemblies aside and let quality decide what becomes of them.' },
    }
  const failed = days
    .map((day) => ({ day, newest: results.filter(({ testedOn }) => testedOn <= day).at(-1) }))
    .find(({ newest }) => newest?.passed === false)
  if (failed)
    return {
      ...named,
      verdict: 'fails',
      measured: { solderedOn: failed.day, failedOn: failed.newest!.restsOn },
      found: `soldered on ${failed.day} although it failed the test of ${failed.newest!.restsOn}.`,
      remedy: { message: 'Set the assemblies aside and let quality decide what becomes of them.' },
    }
  const passed = results.filter((result) => result.passed)
  const tests = passed.map(({ testedOn }) => testedOn)
  const untested = tests[0] === undefined || tests[0] > first
  if (untested)
    return {
      ...named,
      verdict: 'fails',
      measured: { solderedOn: first, firstTestedOn: tests[0] ?? 'never' },
      found: `soldered on ${first} before it had passed any solderability test under the specified conditions${tests[0] ? ` (first on ${tests[0]})` : ''}.`,
      remedy: { message: 'Test what is left of the lot; let quality judge the assemblies made from it.' },
    }
  const start = startOfStorage(lot)
  const allowed = daysBetween(start, monthsAfter(start, months))
  const last = days[days.length - 1]!
  const stored: Part & { margin: Margin } = partAt(
    named,
    { words: `in store since ${start}`, measured: { inStoreSince: start } },
    daysBetween(start, last),
    allowed,
    guard,
    last,
    'Solder no more of it; reaffirm its solderability and ask quality for a concession that names it.',
  )
  const ages = days.map((day) => {
    const { restsOn } = passed.filter(({ testedOn }) => testedOn <= day).at(-1)!
    return { day, testedOn: restsOn, age: daysBetween(restsOn, day) }
  })
  const oldest = ages.reduce((worst, one) => (one.age > worst.age ? one : worst))
  const { testedOn } = oldest
  const sinceTest = partAt(
    named,
    { words: `tested ${testedOn}`, measured: { testedOn } },
    oldest.age,
    testedMax.value,
    guard,
    oldest.day,
    'Test a sample again before more of the lot is soldered.',
  )
  return decidingPart([stored, sinceTest])!
}

function partAt(
  named: Pick<Part, 'subject' | 'about'>,
  since: { readonly words: string; readonly measured: Measured },
  found: number,
  limit: number,
  guard: GoverningRequirement,
  day: string,
  message: string,
): Part & { margin: Margin } {
  const margin: Margin = {
    found,
    limit,
    unit: 'days',
    direction: 'at most',
    guardBand: (guard.value / 100) * limit,
  }
  const verdict = verdictOn(margin)
  return {
    ...named,
    verdict,
    measured: { ...since.measured, solderedOn: day },
    found: `${since.words}, soldered on ${day}: ${formatQuantity(found, 'days')} of ${formatQuantity(limit, 'days')} allowed.`,
    margin,
    ...(verdict !== 'meets' && { remedy: { message } }),
  }
}

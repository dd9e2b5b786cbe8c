import { reaffirmationAgeMost } from '@/shared/plan/limits/evaluation-storage'
import { daysBetween } from '@/shared/quantity/calendar'
import { formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { isUsable, lotName } from '@/shared/records/lot-identity'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
} from '@/shared/rules/finding'
import { lots, recordsOf } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import {
  codeKey,
  lotCodes,
  lotsUsed,
  monthsAfter,
  monthsFor,
  newestOnOrBefore,
  startOfStorage,
  storageReads,
  testDays,
} from '@/shared/storage/storage-time'

/** Less than so much of the time allowed left at soldering is marginal. */
const GUARD_SHARE = 0.1

export const storageClockRule = rule({
  id: 'storage-clock',
  title: 'Time from evaluation to soldering',
  why: 'What wetted well when it was tested goes on ageing. The clock runs from making and from the test, and stops when the solder flows.',
  stage: 'control',
  version: 2,
  reads: {
    ...storageReads,
    testedMost: reaffirmationAgeMost,
    lots,
    runs: recordsOf('soldering-run', 'soldering runs'),
  },
  judge({ boardMonths, partMonths, testedMost, lots: onFile, runs }): Judged {
    const limit = `Soldered within ${formatQuantity(boardMonths, 'months')} (boards) or ${formatQuantity(partMonths, 'months')} (components) in store, and within ${formatQuantity(testedMost.value, 'days')} of the newest solderability test (${namedRuling(testedMost)}).`
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
      return months === undefined ? [] : [judgeLot(lot, days, months, testedMost.value)]
    })
    if (parts.length === 0)
      return undetermined(
        'The soldering runs name no lot of boards or components.',
        ['the lots of boards and components in each soldering run'],
        limit,
      )
    const verdict = worstVerdict(parts.map((part) => part.verdict))
    const worst = parts.find((part) => part.verdict === verdict)!
    const unnamed = runs.filter(({ lots: named }) => lotCodes(named).length === 0).length
    return {
      verdict,
      found: `${worst.subject}: ${worst.found}`,
      limit,
      margin: worst.margin,
      working: [
        { label: 'Lots soldered', result: `${parts.length} of boards and components in ${runs.length} runs` },
      ],
      sources: [sourceOf(testedMost)],
      remedy: worst.remedy,
      ...(verdict === 'undetermined' && { missing: [`${worst.subject} on file`] }),
      parts,
      notes: [
        'A date code of four figures is read as year and week of making; without one the clock starts at receipt, which is later than the truth.',
        ...(unnamed > 0 ? [`${unnamed} runs name no lot and are not judged.`] : []),
      ],
    }
  },
})

const unknownLot = (code: string, day: string): Part => ({
  subject: `Lot ${code}`,
  verdict: 'undetermined',
  found: `soldered on ${day}, but no lot of that code is on file.`,
  remedy: { says: `Enter lot ${code} with its tests, or put the code in the soldering run right.` },
})

function judgeLot(lot: Lot, days: readonly string[], months: number, testedMostDays: number): Part {
  const subject = lotName(lot)
  const first = days[0]!
  if (!isUsable(lot))
    return {
      subject,
      verdict: 'fails',
      found: `soldered on ${first} although it was rejected.`,
      remedy: { says: 'Set the assemblies aside and let quality decide what becomes of them.' },
    }
  const tests = testDays(lot)
  const untested = tests[0] === undefined || tests[0] > first
  if (untested)
    return {
      subject,
      verdict: 'fails',
      found: `soldered on ${first} before any solderability test${tests[0] ? ` (first on ${tests[0]})` : ''}.`,
      remedy: { says: 'Test what is left of the lot; let quality judge the assemblies made from it.' },
    }
  const start = startOfStorage(lot)
  const allowed = daysBetween(start, monthsAfter(start, months))
  const last = days[days.length - 1]!
  const stored: Part & { margin: Margin } = partAt(
    subject,
    `in store since ${start}`,
    daysBetween(start, last),
    allowed,
    last,
    'Solder no more of it; reaffirm its solderability and ask quality for a concession that names it.',
  )
  const ages = days.map((day) => ({ day, age: daysBetween(newestOnOrBefore(tests, day), day) }))
  const oldest = ages.reduce((worst, one) => (one.age > worst.age ? one : worst))
  const sinceTest = partAt(
    subject,
    `tested ${newestOnOrBefore(tests, oldest.day)}`,
    oldest.age,
    testedMostDays,
    oldest.day,
    'Test a sample again before more of the lot is soldered.',
  )
  const verdict = worstVerdict([stored.verdict, sinceTest.verdict])
  if (stored.verdict === sinceTest.verdict)
    return room(stored.margin) <= room(sinceTest.margin) ? stored : sinceTest
  return stored.verdict === verdict ? stored : sinceTest
}

const room = ({ found, limit }: Margin): number => limit - found

function partAt(
  subject: string,
  since: string,
  found: number,
  limit: number,
  day: string,
  says: string,
): Part & { margin: Margin } {
  const margin: Margin = { found, limit, unit: 'days', direction: 'at most', guardBand: GUARD_SHARE * limit }
  const verdict = verdictOn(margin)
  return {
    subject,
    verdict,
    found: `${since}, soldered on ${day}: ${formatQuantity(found, 'days')} of ${formatQuantity(limit, 'days')} allowed.`,
    margin,
    ...(verdict !== 'meets' && { remedy: { says } }),
  }
}

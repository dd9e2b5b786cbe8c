import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import { lotName, aboutLot } from '@/shared/records/lot-identity'
import { PLATING_PLACES } from '@/shared/methods/plating-thickness'
import { verdictOn, worstVerdict, type Margin, type Part, type WorkingLine } from '@/shared/rules/finding'
import type { ToleranceContent } from '@/shared/statistics/tolerance/tolerance-content'
import { memory } from '@/shared/memo'
import type { PlatingReadings } from './plating-readings'
import {
  platingDemandsFrom,
  specificationFrom,
  type PlatingDemands,
  type PlatingInputs,
} from './plating-reads'
import { platingWindow, type PlatingWindow, hasWindow } from './plating-window'
import { toleranceShown, type ToleranceLimit, type ToleranceShown } from './tolerance-shown'
import { measure, count } from '@/shared/rules/measure'

/** What is judged: one deposit at one kind of place of a lot. */
const groupSubject = ({ lot, deposit, place }: PlatingReadings) => ({
  subject: `${lotName(lot)}, ${deposit}, ${PLATING_PLACES[place].label.toLowerCase()}`,
  about: { ...aboutLot(lot), deposit, place },
})

/** A group's part of the finding, and the numbers behind it. */
export interface JudgedGroup {
  readonly part: Part
  readonly working: readonly WorkingLine[]
}

/** Judges one deposit at one kind of place of a lot against its specified thickness. */
export function judgePlatingGroup(group: PlatingReadings, inputs: PlatingInputs): JudgedGroup {
  const window = platingWindow(group, specificationFrom(inputs))
  if (!hasWindow(window)) {
    const verdict = window.asksNothing ? 'not applicable' : 'undetermined'
    return { part: { ...groupSubject(group), verdict, found: window.message }, working: [] }
  }
  const { minUm, maxUm, document } = window
  const demands = platingDemandsFrom(inputs)
  const { coverage, confidence, guardShare, voidShare } = demands
  return knownGroups(group, [minUm, maxUm, document, coverage, confidence, guardShare, voidShare], () =>
    judgeAgainst(window, group, demands),
  )
}
/** The thickness rule and the disposition of lots both ask for every group. */
const knownGroups = memory<PlatingReadings, JudgedGroup>(2)

function judgeAgainst(window: PlatingWindow, group: PlatingReadings, demands: PlatingDemands): JudgedGroup {
  const subject = groupSubject(group)
  const thin = voids(group, window, demands)
  if (thin !== undefined) return { part: { ...subject, ...thin }, working: [] }
  const sides = sidesOf(group, window, demands)
  const verdict = worstVerdict(sides.map(({ judged }) => judged.verdict))
  const worst = sides.find(({ judged }) => judged.verdict === verdict)!
  return { part: { ...subject, ...worst.judged }, working: workingOf(worst, window, demands) }
}

type SideJudged = Omit<Part, 'subject' | 'about'>

interface Side {
  readonly limit: ToleranceLimit
  readonly judged: SideJudged
  readonly shown?: ToleranceShown
}

function sidesOf(group: PlatingReadings, { minUm, maxUm }: PlatingWindow, demands: PlatingDemands): Side[] {
  if (maxUm === undefined) return [judgeSide(group, { side: 'lower', value: minUm }, demands)]
  return [
    judgeSide(group, { side: 'lower', value: minUm, ofTwo: true }, demands),
    judgeSide(group, { side: 'upper', value: maxUm, ofTwo: true }, demands),
  ]
}

function judgeSide(group: PlatingReadings, limit: ToleranceLimit, demands: PlatingDemands): Side {
  if (!group.bySpecimen.flat().every(Number.isFinite)) {
    return { limit, judged: { verdict: 'undetermined', found: 'a reading is not a number.' } }
  }
  const shown = toleranceShown(group.bySpecimen, limit, demands)
  return { limit, shown, judged: judgeShown(group, shown, limit, demands) }
}

function judgeShown(
  { uncertaintyUm }: PlatingReadings,
  shown: ToleranceShown,
  limit: ToleranceLimit,
  demands: PlatingDemands,
): SideJudged {
  const measured = {
    readings: count(shown.readings),
    specimens: count(shown.specimens),
    mean: measure(shown.mean, 'µm'),
    ...(shown.bound !== undefined && {
      standardDeviation: measure(shown.standardDeviation, 'µm'),
      coverage: measure(demands.coverage * 100, '%'),
      confidence: measure(demands.confidence * 100, '%'),
    }),
  }
  if (shown.bound === undefined) {
    return {
      measured,
      verdict: shown.outcome === 'outside' ? 'fails' : 'undetermined',
      found: `${shown.readings === 1 ? 'a single reading' : `${shown.readings} readings on a single specimen`} of ${formatQuantity(shown.mean, 'µm', 3)} on average: one specimen shows no spread between specimens.`,
      remedy: { message: 'Measure more specimens of the lot.' },
    }
  }
  const asked = limit.side === 'lower' ? 'least' : 'most'
  const pair = formatAgainst(shown.bound, limit.value, 'µm')
  const share = `${formatNumber(demands.coverage * 100)} %`
  const reach = limit.side === 'lower' ? 'have at least' : 'have at most'
  const seen = `${shown.readings} readings on ${shown.specimens} specimens, mean ${formatQuantity(shown.mean, 'µm', 3)}, s ${formatQuantity(shown.standardDeviation, 'µm', 3)}`
  const message = `${seen}; ${share} of the places ${reach} ${pair.found} (${asked} ${pair.limit})`
  const margin: Margin = {
    found: shown.bound,
    limit: limit.value,
    unit: 'µm',
    direction: limit.side === 'lower' ? 'at least' : 'at most',
    guardBand: uncertaintyUm ?? demands.guardShare * limit.value,
  }
  if (shown.outcome === 'too few') return { ...tooFew(shown, message, margin), measured }
  if (shown.outcome === 'outside') {
    const found = `${message}: too ${asked === 'least' ? 'thin' : 'thick'}.`
    return { verdict: 'fails', found, margin, measured, remedy: shiftNeeded(shown, limit) }
  }
  if (shown.standardDeviation === 0) {
    const found = `${message}; all readings are alike: the instrument is too coarse to show the spread.`
    return { verdict: 'marginal', found, margin, measured }
  }
  return { verdict: verdictOn(margin), found: `${message}.`, margin, measured }
}

const tooFew = ({ specimens, enough }: ToleranceShown, message: string, margin: Margin): SideJudged => ({
  verdict: 'undetermined',
  found: `${message}: too few specimens to tell.`,
  margin,
  remedy:
    enough === undefined
      ? undefined
      : {
          message: `With the same mean and spread, ${enough} specimens would show it: take ${enough - specimens} more. More readings on the same specimens would not do.`,
        },
})

function shiftNeeded({ standardDeviation, factor }: ToleranceShown, limit: ToleranceLimit) {
  const reach = (factor ?? Number.NaN) * standardDeviation
  const mean = limit.side === 'lower' ? limit.value + reach : limit.value - reach
  return {
    message: `With this spread the mean would have to be ${formatQuantity(mean, 'µm', 3)}: reject the lot or have it plated again.`,
  }
}

function voids(
  group: PlatingReadings,
  { minUm }: PlatingWindow,
  { voidShare }: PlatingDemands,
): SideJudged | undefined {
  if (group.deposit !== 'copper' || group.place !== 'hole') return undefined
  const thinnest = Math.min(...group.bySpecimen.flat())
  if (!(thinnest < voidShare * minUm)) return undefined
  const margin: Margin = {
    found: thinnest,
    limit: voidShare * minUm,
    unit: 'µm',
    direction: 'at least',
    guardBand: 0,
  }
  const pair = formatAgainst(thinnest, margin.limit, 'µm')
  return {
    verdict: 'fails',
    measured: { check: 'void' },
    found: `thinnest copper ${pair.found}, under ${pair.limit} (${formatNumber(voidShare * 100)} % of the least): counts as a void.`,
    margin,
    remedy: { message: 'Reject the lot: a void in the wall cannot be mended.' },
  }
}

/** The numbers of the side that speaks for the group. */
function workingOf({ shown, limit }: Side, window: PlatingWindow, content: ToleranceContent): WorkingLine[] {
  if (shown?.basis === undefined || shown.bound === undefined || shown.factor === undefined) return []
  const sign = limit.side === 'lower' ? '−' : '+'
  const asked = limit.side === 'lower' ? 'at least' : 'at most'
  return [
    { label: 'Specified', result: `${asked} ${formatQuantity(limit.value, 'µm')} (${window.document})` },
    {
      label: 'Factor k',
      formula: limit.ofTwo
        ? 'k with which mean ± k·s holds the share between both limits, averaged over the error of the mean'
        : 'k = t′(confidence; f, z(coverage)·√n) ÷ √n, t′ the noncentral t',
      numbers: `worth n ${formatNumber(shown.basis.effectiveReadings)} independent readings, f ${formatNumber(shown.basis.degreesOfFreedom)}, coverage ${content.coverage}, confidence ${content.confidence}`,
      result: formatNumber(shown.factor, 5),
    },
    {
      label: 'Tolerance bound',
      formula: `mean ${sign} k · s`,
      numbers: `${formatNumber(shown.mean)} ${sign} ${formatNumber(shown.factor)} · ${formatNumber(shown.standardDeviation)}`,
      result: formatQuantity(shown.bound, 'µm'),
    },
  ]
}

import { bridgingGapMin, bridgingRunMax } from '@/shared/plan/limits/spacings'
import { bridgingGuard } from '@/shared/plan/limits/specification-guards'
import { boardLength, boardWidth } from '@/shared/plan/parameters/assessment-inspection'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, worstVerdict, type Margin, type Part, type Remedy } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, tightest } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { PAIR_REACH_MM, type Board } from '../board'
import type { LandPair } from '../land-pairs'
import { inMm, toMicrometre } from './in-words'
import type { PlacedPart } from './placed-part'
import { acrossTravelMm, axisOf, countFor, travelAxis, TRAVELS, type Axis } from './wave-travel'

/** Every two bare lands that lie beside each other, in the direction in which the board crosses the wave. */
export const bridgingOnBoard = ({ landPairs, holes, outline }: Board) =>
  rule({
    id: 'bridging-on-board',
    title: 'Lands beside each other over the wave',
    why: 'Solder that leaves two lands together across the travel hangs between them and bridges. Turning the board by a quarter costs nothing while it is being laid out.',
    formula:
      'bare gap ≥ least; facing each other across the travel = side by side · sin(angle) ≤ most, below twice the least gap',
    stage: 'specification',
    version: 1,
    reads: {
      gap: bridgingGapMin,
      run: bridgingRunMax,
      guard: bridgingGuard,
      process: optional(solderingProcess),
      alongMm: optional(boardLength),
      acrossMm: optional(boardWidth),
    },
    judge({ gap, run, guard, process, alongMm, acrossMm }) {
      if (process !== undefined && process !== 'wave')
        return notApplicable('The joints are not soldered over a wave that the board crosses.')
      if (!holes.some(({ kind }) => kind === 'component'))
        return notApplicable('The files have no hole for a lead.')
      const terms: Terms = { gap, run, share: guard.value / 100 }
      const axis = travelAxis(outline, { alongMm, acrossMm })
      const close = landPairs.filter(({ gapMm }) => toMicrometre(gapMm) < 2 * gap.value)
      const parts = close.map((pair) => judgePair(pair, axis, terms))
      const proposal = proposalFor(close)
      const judged = judgedByParts({
        parts: [...parts, ...beyond(2 * gap.value, parts.length)],
        noun: 'pairs of lands',
        limit: `At least ${inMm(gap.value)} bare (${gap.document}); at most ${inMm(run.value)} facing each other across the travel (${run.document})`,
        working: TRAVELS.slice(0, 2).map((travel) => ({
          label: `Travel along ${axisOf(travel)}, ${travel.angleDeg}° or ${travel.angleDeg + 180}°`,
          formula: 'pairs whose gap lies along the travel; Σ side by side · sin(angle)',
          result: inCount(close, axisOf(travel)),
        })),
        sources: [gap.limit.byDefault.from, run.limit.byDefault.from],
        notes: [
          'The side that meets the solder is taken to be the bottom. 0° is towards x of the files seen from the top, 90° towards y.',
          'Which of two opposite edges goes first these pairs do not tell: a larger last land or a spare one at the end of a row decides that.',
          'Whether rows of connector pins lie best along or across the travel, practice disagrees.',
        ],
      })
      return {
        ...judged,
        measured: proposal.measured,
        ...(close.length > 0 && wantsTurning(judged.verdict, axis, proposal) && { remedy: proposal.remedy }),
      }
    },
  })

interface Terms {
  readonly gap: GoverningRequirement
  readonly run: GoverningRequirement
  readonly share: number
}

function judgePair(pair: LandPair, axis: Axis | undefined, terms: Terms): PlacedPart {
  const { nets, layer, gapMm, at } = pair
  const subject = `${nets.join(' to ')}, ${layer}`
  const placed = { at, layer, rank: gapMm }
  if (axis) return { ...judgeAlong(pair, axis, terms), subject, ...placed }
  const [one, other] = [judgeAlong(pair, 'x', terms), judgeAlong(pair, 'y', terms)]
  if (one.verdict === other.verdict) return { ...one, subject, ...placed }
  return {
    subject,
    verdict: 'undetermined',
    found: `which way the board travels is not told: along x ${one.found}; along y ${other.found}`,
    ...placed,
  }
}

function judgeAlong(pair: LandPair, axis: Axis, { gap, run, share }: Terms): Omit<Part, 'subject'> {
  const [gapMm, across] = [toMicrometre(pair.gapMm), toMicrometre(acrossTravelMm(pair, axis))]
  const gapMargin: Margin = {
    found: gapMm,
    limit: gap.value,
    unit: 'mm',
    direction: 'at least',
    guardBand: share * gap.value,
  }
  const runMargin: Margin = {
    found: across,
    limit: run.value,
    unit: 'mm',
    direction: 'at most',
    guardBand: share * run.value,
  }
  // How long a run may be is common practice alone: it warns, the gap decides.
  const long = verdictOn(runMargin) === 'meets' ? 'meets' : 'marginal'
  return {
    verdict: worstVerdict([verdictOn(gapMargin), long]),
    found: `${inMm(gapMm)} bare, ${inMm(across)} facing each other across the travel`,
    margin: long === 'meets' ? gapMargin : tightest(gapMargin, runMargin),
    measured: { gap: measure(gapMm, 'mm'), acrossTravel: measure(across, 'mm') },
  }
}

interface Proposal {
  /** Both where one is as good as the other. */
  readonly axes: readonly Axis[]
  readonly measured: NonNullable<Part['measured']>
  readonly remedy: Remedy
}

/** The travel on which the fewest lands face each other: by how far all of them do, told to the micrometre. */
function proposalFor(close: readonly LandPair[]): Proposal {
  const counts = { x: countFor(close, 'x'), y: countFor(close, 'y') }
  const [x, y] = [toMicrometre(counts.x.acrossMm), toMicrometre(counts.y.acrossMm)]
  const axes: readonly Axis[] = x === y ? ['x', 'y'] : x < y ? ['x'] : ['y']
  const best = TRAVELS.filter((travel) => axes.includes(axisOf(travel)))
  const [axis] = axes
  const other = axis === 'x' ? 'y' : 'x'
  return {
    axes,
    measured: {
      proposed: best.map(({ angleDeg }) => `${angleDeg}°`),
      acrossAlongX: measure(x, 'mm'),
      acrossAlongY: measure(y, 'mm'),
    },
    remedy: {
      message:
        axes.length > 1
          ? 'Whichever edge goes first, as many lands face each other: open the gaps, or mask between the lands.'
          : `Let the board cross the wave at ${best.map(({ angleDeg }) => `${angleDeg}°`).join(' or ')}, its ${best.map(({ first }) => first).join(' or ')} edge first: ${inCount(close, axis!)}, against ${inCount(close, other)}.`,
    },
  }
}

const inCount = (close: readonly LandPair[], axis: Axis): string => {
  const { pairs, acrossMm } = countFor(close, axis)
  return `${pairs} of ${close.length} pairs, ${formatQuantity(toMicrometre(acrossMm), 'mm', 6)} in all`
}

const wantsTurning = (verdict: Part['verdict'], axis: Axis | undefined, { axes }: Proposal): boolean =>
  verdict !== 'meets' || axis === undefined || !axes.includes(axis)

function beyond(neededMm: number, listed: number): Part[] {
  if (neededMm > PAIR_REACH_MM)
    return [
      {
        subject: 'Wider gaps',
        verdict: 'undetermined',
        found: `they are looked for up to ${inMm(PAIR_REACH_MM)}, and below ${inMm(neededMm)} lands count as close`,
      },
    ]
  if (listed > 0) return []
  return [{ subject: 'Bare lands', verdict: 'meets', found: `no two lie closer than ${inMm(neededMm)}` }]
}

import { marginIn, type ProcessWindow } from '@/shared/logs/logged-window'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import type { Part } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { decidingPart } from '@/shared/rules/parts'
import { SLOPE_WINDOW_S, type ProfileSummary } from './profile-summary'
import type { ProfileWindows } from './profile-windows'

type Couple = ProfileSummary['couples'][number]

/** Each term of a measured pass at its worst thermocouple, the difference across the board, and how many couples told of it. */
export function profileTerms(
  { code }: Log,
  { couples, peakSpreadK }: ProfileSummary,
  windows: ProfileWindows,
  minCouples: GoverningRequirement,
): Part[] {
  const term = (what: string, window: ProcessWindow, of: (couple: Couple) => number, mend: string): Part =>
    decidingPart(couples.map((couple) => placeOf(named(code, what), couple, window, of(couple), mend)))!
  return [
    term(
      'peak',
      windows.peak,
      ({ peakC }) => peakC,
      'Change the last zones or the speed, and measure again.',
    ),
    term(
      'time above liquidus',
      windows.aboveLiquidus,
      ({ timeAboveLiquidusS }) => timeAboveLiquidusS,
      'Change the speed, or the zones about the peak, and measure again.',
    ),
    ...(windows.soak
      ? [
          term(
            'soak',
            windows.soak,
            ({ soakS }) => soakS,
            'Change the middle zones or the speed, and measure again.',
          ),
        ]
      : []),
    term(
      'steepest rise',
      windows.rise,
      ({ steepestRiseKPerS }) => steepestRiseKPerS,
      'Lower the first zones or run slower, and measure again.',
    ),
    term(
      'steepest fall',
      windows.fall,
      ({ steepestFallKPerS }) => steepestFallKPerS,
      'Cool more gently behind the peak, and measure again.',
    ),
    couplesPart(code, couples.length, minCouples.value),
    ...(couples.length > 1 ? [spreadPart(code, peakSpreadK, windows.spread)] : []),
  ]
}

/** One term of a profile as what a part is about. */
const named = (code: string, term: string) => ({
  subject: `Profile ${code}, ${term}`,
  about: { log: code, of: term },
})

function placeOf(
  subject: Pick<Part, 'subject' | 'about'>,
  { name, column }: Couple,
  window: ProcessWindow,
  found: number,
  mend: string,
): Part {
  const where = name.toLowerCase()
  if (Number.isNaN(found))
    return {
      ...subject,
      verdict: 'undetermined',
      measured: { couple: column },
      found: `the samples of ${where} hold no ${SLOPE_WINDOW_S} s of it.`,
      remedy: { message: 'Measure a whole pass, from the cold board to the cooled one.' },
    }
  const { verdict, margin } = marginIn(window, found)
  const printed = margin
    ? formatAgainst(found, margin.limit, window.unit).found
    : formatQuantity(found, window.unit)
  return {
    ...subject,
    verdict,
    measured: { found: measure(found, window.unit), couple: column },
    found: `${printed} at ${where}.`,
    ...(margin && { margin }),
    ...(verdict === 'fails' && { remedy: { message: mend } }),
  }
}

function couplesPart(code: string, found: number, min: number): Part {
  const more = min - found
  const margin = { found, limit: min, unit: '1', direction: 'at least', guardBand: 0 } as const
  return {
    ...named(code, 'thermocouples'),
    verdict: more > 0 ? 'undetermined' : 'meets',
    found: more > 0 ? `${found} of the ${min} that are asked: ${more} more.` : `${found} on the board.`,
    margin,
    ...(more > 0 && {
      remedy: {
        message: `Measure again with ${more} more: the coolest joint, the hottest place and the part most at risk.`,
      },
    }),
  }
}

function spreadPart(code: string, peakSpreadK: number, window: ProcessWindow): Part {
  const { verdict, margin } = marginIn(window, peakSpreadK)
  return {
    ...named(code, 'difference at the peak'),
    verdict,
    found: `${formatQuantity(peakSpreadK, 'K', 3)} between the hottest and the coolest place.`,
    ...(margin && { margin }),
    ...(verdict === 'fails' && {
      remedy: { message: 'Soak longer so that heavy parts catch up, or shield the light ones.' },
    }),
  }
}

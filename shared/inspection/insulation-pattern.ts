import { gapInReadings } from '@/shared/inspection/gap-in-readings'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { verdictOn, type Margin, type Measured, type Part, type Verdict } from '@/shared/rules/finding'
import { count, measure } from '@/shared/rules/measure'

type Reading = RecordOf<'insulation-resistance'>

/** What a pattern is held against; hours from the start of the test. */
interface Asked {
  readonly limitMOhm: number
  readonly guardBand: number
  readonly countsFromHours: number
  readonly maxHoursBetween: number
  readonly lastsHours: number
  /** Why a reading of that verdict may not be believed for its instrument; undefined where it may. */
  readonly doubtOf: (reading: Reading, verdict: Verdict) => string | undefined
}

/** "20 min", "72 h" */
export const betweenInWords = (hours: number): string =>
  hours < 1 ? formatQuantity(hours * 60, 'min', 3) : formatQuantity(hours, 'h')

const LOOK_FAILS: Readonly<Partial<Record<NonNullable<Reading['look']>, string>>> = {
  'long-filaments': 'filaments cross more than a fifth of the spacing',
  corrosion: 'conductors are corroded',
}

const CLEANER = {
  message: 'Remove the residue better, or choose a flux of lower activity; then test new coupons.',
}

/** One pattern of an insulation resistance test: its lowest reading, whether it was read long and often enough, and how it looked afterwards. */
export function judgePattern(pattern: string, rows: readonly Reading[], asked: Asked): Part {
  const { limitMOhm, guardBand, countsFromHours, maxHoursBetween, lastsHours, doubtOf } = asked
  const counting = rows.filter(({ hours }) => hours >= countsFromHours)
  const looks = rows.flatMap(({ look }) => look ?? [])
  const ill = looks.find((look) => LOOK_FAILS[look] !== undefined)
  const lowest = counting.reduce<Reading | undefined>(
    (low, row) => (low === undefined || row.resistanceMOhm < low.resistanceMOhm ? row : low),
    undefined,
  )
  const margin: Margin | undefined = lowest && {
    found: lowest.resistanceMOhm,
    limit: limitMOhm,
    unit: 'MΩ',
    direction: 'at least',
    guardBand,
  }
  const printed = lowest && formatAgainst(lowest.resistanceMOhm, limitMOhm, 'MΩ').found
  const part = {
    subject: pattern,
    measured: {
      ...(lowest && { lowestAt: measure(lowest.hours, 'h') }),
      ...(looks.length > 0 && { seen: [...new Set(looks)].sort() }),
    } as Measured,
    ...(margin && { margin }),
  }
  if (ill) return { ...part, verdict: 'fails', found: `${LOOK_FAILS[ill]}.`, remedy: CLEANER }
  if (!lowest || !margin)
    return {
      ...part,
      verdict: 'undetermined',
      found: `no reading after ${countsFromHours} h yet.`,
      remedy: { message: `Read on to ${lastsHours} h.` },
    }
  const verdict = verdictOn(margin)
  if (verdict === 'fails')
    return { ...part, verdict, found: `${printed} at the lowest, at ${lowest.hours} h.`, remedy: CLEANER }
  const doubt = counting.map((row) => doubtOf(row, row === lowest ? verdict : 'meets')).find(Boolean)
  if (doubt !== undefined)
    return {
      ...part,
      verdict: 'undetermined',
      found: `${printed} at the lowest proves nothing: ${doubt}.`,
      measured: { ...part.measured, doubt },
      remedy: { message: 'Name the instrument with the reading, or read again with one in calibration.' },
    }
  const short = openPointsOf(rows, maxHoursBetween, lastsHours)
  if (short)
    return {
      ...part,
      verdict: 'undetermined',
      found: `${printed} at the lowest, but ${short.found}.`,
      measured: { ...part.measured, ...short.measured },
      remedy: { message: short.message },
    }
  return {
    ...part,
    verdict,
    found: `${printed} at the lowest, at ${lowest.hours} h.`,
    ...(verdict !== 'meets' && { remedy: CLEANER }),
  }
}

/** What of the test is not done yet: its length, its interval, or the look at the end. */
function openPointsOf(
  rows: readonly Reading[],
  maxHoursBetween: number,
  lastsHours: number,
): { found: string; message: string; measured: Measured } | undefined {
  const longest = Math.max(...rows.map(({ hours }) => hours))
  if (longest < lastsHours)
    return {
      found: `read for ${longest} of ${lastsHours} h only`,
      message: `Read on to ${lastsHours} h.`,
      measured: { readTo: measure(longest, 'h') },
    }
  const gap = gapInReadings(rows, maxHoursBetween)
  if (gap)
    return {
      found: `no reading from ${gap.from} to ${gap.to} h`,
      message: `Read at least every ${betweenInWords(maxHoursBetween)}; where an instrument read by itself, record how often.`,
      measured: { unreadFrom: measure(gap.from, 'h'), unreadTo: measure(gap.to, 'h') },
    }
  if (rows.every(({ look }) => look === undefined))
    return {
      found: 'nobody looked at the pattern afterwards',
      message: 'Look for filaments and corrosion under magnification, and record what is seen.',
      measured: { lookedAt: false },
    }
  return undefined
}

/** One pattern may be lucky in its place. */
export const tooFew = (read: number, min: number): Part[] =>
  read >= min
    ? []
    : [
        {
          subject: 'Patterns',
          about: { matter: 'patterns' },
          verdict: 'undetermined',
          measured: { read: count(read, 'pieces'), needed: count(min, 'pieces') },
          found: `${read} of ${min} were read.`,
          remedy: { message: `Read ${min - read} more, prepared alike.` },
        },
      ]

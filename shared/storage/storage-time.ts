import { boardStorageMonths, leadStorageMonths } from '@/shared/plan/parameters/storage'
import { addDays, addMonths, DAYS_PER_MONTH, mondayOfWeek } from '@/shared/quantity/calendar'
import type { Lot } from '@/shared/records/lot'
import type { SolderingRun } from '@/shared/records/soldering-work'

/** What the specification allows boards and components in store. */
export const storageReads = { boardMonths: boardStorageMonths, partMonths: leadStorageMonths }

export const codeKey = (code: string): string => code.trim().toLowerCase()
export const lotCodes = (text: string | undefined): string[] =>
  (text ?? '').split(',').flatMap((code) => (code.trim() === '' ? [] : [code.trim()]))

/** The lots that runs name, with the days on which each was soldered, ascending. */
export function lotsUsed(runs: readonly SolderingRun[]): { code: string; days: string[] }[] {
  const used = new Map<string, { code: string; days: string[] }>()
  for (const { lots: named, doneOn } of runs)
    for (const code of lotCodes(named)) {
      const known = used.get(codeKey(code))
      if (known) known.days.push(doneOn)
      else used.set(codeKey(code), { code, days: [doneOn] })
    }
  for (const { days } of used.values()) days.sort()
  return [...used.values()]
}

export const monthsFor = ({ kind }: Lot, board: number, part: number): number | undefined => {
  if (kind === 'bare board' || kind === 'coupon') return board
  return kind === 'component' ? part : undefined
}

export const monthsAfter = (date: string, months: number): string =>
  addDays(addMonths(date, Math.trunc(months)), Math.round((months - Math.trunc(months)) * DAYS_PER_MONTH))

/** Parts have borne year and week since the sixties: from here on two figures may name a year of the last century. */
const OLDEST_TWO_FIGURE_YEAR = 60

/**
 * The Monday of the week a four-figure date code names, if that is before
 * receipt; else the day of receipt. A code that in this century would lie after
 * receipt, as 9814 does, is old stock of the last.
 */
export function startOfStorage({ dateCode, receivedOn }: Lot): string {
  const code = /^(\d{2})(\d{2})$/.exec(dateCode.trim())
  const year = Number(code?.[1])
  const week = Number(code?.[2])
  if (!code || !(week >= 1 && week <= 53)) return receivedOn
  const monday = mondayOfWeek(2000 + year, week)
  if (monday < receivedOn) return monday
  return year >= OLDEST_TWO_FIGURE_YEAR ? mondayOfWeek(1900 + year, week) : receivedOn
}

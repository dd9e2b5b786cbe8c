import { dateText, dateTyped, hasShortYear } from '@/shared/quantity/date-typed'
import { instantAtWorks, noInstantInWords, type NoInstant } from '@/shared/quantity/works-clock'
import { readRfc3339 } from '@/shared/trail/rfc3339'
import type { FileForm } from './file-form'

/** Parted by a blank: with a T and no zone it is read as local time by some and as UTC by others. */
const DATE_AND_TIME = /^(\S.*?) (\d{1,2}):(\d\d)(?::(\d\d)(?:[.,](\d{1,9}))?)?$/
const MS_PER_MINUTE = 60_000

type Clock = Pick<FileForm, 'dates' | 'timeZone'>

/** How times are read: RFC 3339 with a zone, or date and time of day by the file's clock. In milliseconds since 1970. */
export function instantRule({ dates, timeZone }: Clock) {
  const minute = minuteReader(timeZone)
  const partsOf = (text: string) => {
    const [, date = '', hour = '', minutes = '', seconds = '0', fraction = ''] =
      DATE_AND_TIME.exec(text) ?? []
    const day = dateTyped(date, dates)
    const restMs = Number(seconds) * 1000 + Number(fraction.slice(0, 3).padEnd(3, '0'))
    return day && restMs < MS_PER_MINUTE
      ? { wall: `${day}T${hour.padStart(2, '0')}:${minutes}`, restMs }
      : { date }
  }
  return {
    read(text: string): number | undefined {
      const withZone = readRfc3339(text)
      if (withZone) return withZone.epochMs
      const parts = partsOf(text)
      const at = parts.wall === undefined ? 'no time' : minute(parts.wall)
      return typeof at === 'number' ? at + (parts.restMs ?? 0) : undefined
    },
    expected: `a time as 2026-03-04T10:11:12Z, or ${dateText('2026-03-04', dates)} 10:11 in ${timeZone}`,
    why(text: string): string | undefined {
      const parts = partsOf(text)
      if (parts.wall === undefined)
        return hasShortYear(parts.date ?? '') ? 'a year of four digits' : undefined
      const at = minute(parts.wall)
      return at === 'skipped' || at === 'twice'
        ? `another time. ${noInstantInWords(at, parts.wall, timeZone).replace(/\.$/, '')}`
        : undefined
    },
  }
}

/** Reads 'YYYY-MM-DDTHH:mm'. Readings follow one another closely, so the newest ten minutes are remembered. */
function minuteReader(timeZone: string): (wall: string) => number | NoInstant {
  let known = { tens: '', at: 0 }
  return (wall) => {
    const tens = wall.slice(0, -1)
    const single = Number(wall.slice(-1)) * MS_PER_MINUTE
    if (tens === known.tens) return known.at + single
    const at = instantAtWorks(wall, timeZone)
    const [from, to] = [instantAtWorks(`${tens}0`, timeZone), instantAtWorks(`${tens}9`, timeZone)]
    // No clock change lies between: then the time runs evenly.
    if (typeof from === 'number' && typeof to === 'number' && to - from === 9 * MS_PER_MINUTE)
      known = { tens, at: from }
    return at
  }
}

import ical, { ICalCalendarMethod } from 'ical-generator'
import { deskLineKey, type DeskLine } from '@/lib/queries/desk'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { AWAITED, TO_DO } from '@/shared/desk/desk-words'
import { instantOf } from '@/shared/quantity/calendar'

const REFRESH_S = 3600
const LONGEST_SUMMARY = 150

/** The due days of a desk as a calendar (RFC 5545): a whole day each, which blocks nobody's time. */
export function deskCalendar(
  lines: readonly DeskLine[],
  addressOf: (line: DeskLine) => string,
  now: Date,
): string {
  const calendar = ical({
    name: 'Liquidus: due',
    prodId: { company: 'Liquidus', product: 'Desk', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
    ttl: REFRESH_S,
  })
  for (const line of lines) {
    if (line.dueOn === null) continue
    calendar.createEvent({
      id: `${nativeSha256(deskLineKey(line)).slice(0, 32)}@liquidus`,
      stamp: now,
      start: new Date(instantOf(line.dueOn)),
      allDay: true,
      timezone: 'UTC',
      summary: summaryOf(line),
      description: line.message,
      url: addressOf(line),
    })
  }
  return calendar.toString()
}

function summaryOf({ code, verb, waitsFor, message }: DeskLine): string {
  const what = waitsFor === undefined ? TO_DO[verb] : `${waitsFor}: ${AWAITED[verb]}`
  const text = `${code}: ${what}. ${message.replace(/\s+/g, ' ')}`
  return text.length > LONGEST_SUMMARY ? `${text.slice(0, LONGEST_SUMMARY - 1)}…` : text
}

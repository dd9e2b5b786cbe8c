import type { DeskLine } from '@/lib/queries/desk'
import { TO_DO } from '@/shared/desk/desk-words'
import { counted } from '@/shared/quantity/counted'

const MOST_TOLD = 40
const LONGEST_LINE = 160

/** The mail that tells a person what came onto their desk: subject and plain text. `url` is the app's address. */
export function digestText(
  name: string,
  fresh: readonly DeskLine[],
  before: number,
  url: string,
): { readonly subject: string; readonly text: string } {
  const more = fresh.length - MOST_TOLD
  return {
    subject: `Liquidus: ${counted(fresh.length, 'new thing', 'new things')} on your desk`,
    text: [
      `${name},`,
      '',
      `${counted(fresh.length, 'thing', 'things')} came onto your desk since the last mail:`,
      '',
      ...fresh.slice(0, MOST_TOLD).map(lineOf),
      ...(more > 0 ? [`- and ${more} more`] : []),
      '',
      ...(before > 0 ? [`${counted(before, 'thing was', 'things were')} there before.`] : []),
      `Your desk: ${url}/`,
      '',
      `You asked for this mail. To stop it: ${url}/desk-settings#daily-mail`,
      '',
    ].join('\n'),
  }
}

function lineOf({ code, verb, message, dueOn }: DeskLine): string {
  const text = `- ${code}. ${TO_DO[verb]}: ${message.replace(/\s+/g, ' ')}`
  const short = text.length > LONGEST_LINE ? `${text.slice(0, LONGEST_LINE - 1)}…` : text
  return dueOn ? `${short} (due ${dueOn})` : short
}

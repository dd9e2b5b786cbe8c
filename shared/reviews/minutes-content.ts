import { canonicalJson } from '@/shared/trail/canonical-json'
import type { AgendaPoint } from './agenda'
import type { Review } from './review'

/** The form of the minutes as signed now. */
const MINUTES_FORM = 1

/**
 * What the chair's signature covers, as canonical JSON: when and who, what was open, and every line with whoever
 * wrote it, struck lines among them. Words of people are in it; words of the program are not.
 */
export const minutesContentOf = (
  programme: string,
  { number, title, heldOn, chairId, chair, present, lines }: Omit<Review, 'closed'>,
  agenda: readonly AgendaPoint[],
): string =>
  canonicalJson({
    content: 'minutes of a design review',
    form: MINUTES_FORM,
    programme,
    review: number,
    title,
    heldOn,
    chair: { id: chairId, name: chair },
    present: present.map((one) => ({ ...one })),
    agenda: agenda.map(({ about, open, count, item }) => ({ about: { ...about }, open, count, item })),
    lines: lines.map((line) => ({
      number: line.number,
      kind: line.kind,
      about: line.about && { kind: line.about.kind, key: line.about.key },
      text: line.text,
      action: line.action,
      owner: line.owner && { ...line.owner },
      corrects: line.corrects,
      by: { id: line.authorId, name: line.author },
      at: line.at,
      struck: line.struck && { ...line.struck },
    })),
  })

/** What was open when minutes were signed, out of the text that the signature covers. */
export const agendaSigned = (cover: string): readonly Omit<AgendaPoint, 'group'>[] =>
  (JSON.parse(cover) as { readonly agenda: readonly Omit<AgendaPoint, 'group'>[] }).agenda

import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { PLACE_NAMES, type NonconformityPlace } from '@/shared/nonconformities/nonconformity'
import { subjectRecord } from '@/shared/reviews/subject'
import { subjectInWords } from '@/shared/reviews/subject-in-words'

export const openNonconformity = defineFace({
  label: 'Open a nonconformity',
  done: 'Opened a nonconformity',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  record: z.object({
    number: z.number(),
    title: z.string(),
    found: z.string(),
    owner: z.enum(DEPARTMENTS),
    place: z.partialRecord(z.enum(['joint', 'part', 'lot', 'assembly', 'line']), z.string()),
    source: subjectRecord.nullable(),
  }),
  reads: ({ number, title, found, owner, place, source }) => ({
    subject: `nonconformity ${number}: ${title}`,
    what: [
      `${DEPARTMENT_NAMES[owner]} sees to it`,
      placeInWords(place),
      source ? `from ${subjectInWords(source, source.name)}` : '',
    ]
      .filter(Boolean)
      .join(', '),
    words: found,
  }),
  leads: ({ number }) => ({ kind: 'nonconformity', number }),
})

const placeInWords = (place: Partial<NonconformityPlace>): string =>
  (Object.keys(PLACE_NAMES) as (keyof NonconformityPlace)[])
    .filter((where) => place[where])
    .map((where) => `${PLACE_NAMES[where].toLowerCase()} ${place[where]}`)
    .join(', ')

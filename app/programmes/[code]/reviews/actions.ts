'use server'
import { reviewAddress } from '@/app/addresses'
import { formAction } from '@/app/forms/form-action'
import type { FormAction, FormState } from '@/app/forms/form-state'
import { text } from '@/app/forms/typed-text'
import { subjectFromText, type Subject } from '@/shared/reviews/subject'

const guests = (form: FormData) =>
  text(form, 'guests')
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter(Boolean)
    .map((line) => {
      const [name = '', from = ''] = line.split(/,(.*)/s).map((part) => part.trim())
      return { name, from }
    })

export const openReview = formAction('open-review', { own: { guests } })
export const recordAttendance = formAction('record-attendance', { own: { guests } })
export const strikeMinute = formAction('strike-minute', {
  then: (_done, form) => `${reviewAddress(text(form, 'programme'), text(form, 'review'))}#minutes`,
})
export const closeReview = formAction('close-review')
export const nameMinutes = formAction('name-minutes')

/** What a line is about: "kind:key", and after the last @ the item it belongs to; nothing for the meeting as a whole. */
const aboutTyped = (form: FormData): { subject: Subject | null; item: string } => {
  const [, about = '', item = ''] = /^(.*)@([^@]*)$/s.exec(text(form, 'about')) ?? []
  return { subject: subjectFromText(about) ?? null, item }
}

/** The page again, with the same point chosen, so that the next line follows. */
const nextLine = (_done: unknown, form: FormData): string => {
  const asked = new URLSearchParams({ about: text(form, 'about'), as: text(form, 'as') })
  return `${reviewAddress(text(form, 'programme'), text(form, 'review'))}?${asked}#write`
}

const noteLine = formAction('write-minute', {
  own: { kind: (form) => text(form, 'as'), about: (form) => aboutTyped(form).subject },
  then: nextLine,
})
const askLine = formAction('ask-action', {
  own: {
    item: (form) => text(form, 'item') || aboutTyped(form).item,
    to: (form) => text(form, 'owner').split(' ')[1] ?? '',
    person: (form) => text(form, 'owner').split(' ')[0] || null,
    question: (form) => text(form, 'text'),
    bornOf: (form) => ({
      kind: 'minute',
      review: Number(text(form, 'review')),
      about: aboutTyped(form).subject,
      owner: text(form, 'owner').split(' ')[0] ?? '',
    }),
  },
  then: nextLine,
})

/** One line of minutes. An action is a question to the department of whoever owes it, and writes its own line. */
export const writeLine: FormAction = async (state, form) =>
  text(form, 'as') === 'action' ? atTheLine(await askLine(state, form)) : noteLine(state, form)

/** What the question of an action lacks is said at the box of the line. */
const atTheLine = (state: FormState): FormState => ({
  ...state,
  fields: {
    ...state.fields,
    ...(state.fields['question'] && { text: state.fields['question'] }),
    ...((state.fields['to'] ?? state.fields['bornOf.owner']) && {
      owner: state.fields['to'] ?? state.fields['bornOf.owner'] ?? '',
    }),
  },
})

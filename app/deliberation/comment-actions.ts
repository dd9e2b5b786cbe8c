'use server'
import { formAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { subjectFromText } from '@/shared/reviews/subject'

/** What it is about is one box, "kind:key"; whom it is for is another, or nobody. */
export const addComment = formAction('add-comment', {
  own: {
    about: (form) => subjectFromText(text(form, 'about')),
    mentions: (form) => [text(form, 'mentions')].filter(Boolean),
  },
})
export const resolveComment = formAction('resolve-comment')

'use server'
import { lessonAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { number, submit, text, ticked } from '@/app/forms/submit'
import { DEPARTMENTS } from '@/shared/plan/department'

export async function proposeLesson(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const [kind, key] = text(form, 'source').split(/:(.*)/s)
  const toInput = () => ({
    programme,
    title: text(form, 'title'),
    learnt: text(form, 'learnt'),
    source: { kind, key: key ?? '' },
    change: changeFrom(form),
  })
  return submit('propose-lesson', form, toInput, ({ result }) =>
    lessonAddress(programme, Number(result['lesson'])),
  )
}

const changeFrom = (form: FormData) =>
  text(form, 'change.kind') === 'limit'
    ? { kind: 'limit', limit: text(form, 'change.limit'), value: number(form, 'change.value') }
    : {
        kind: 'item',
        item: {
          stage: text(form, 'change.item.stage'),
          title: text(form, 'change.item.title'),
          asks: text(form, 'change.item.asks'),
          owner: text(form, 'change.item.owner'),
          approvers: DEPARTMENTS.filter((department) => ticked(form, `approves.${department}`)),
          evidence: text(form, 'change.item.evidence'),
        },
      }

export async function decideLesson(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const lesson = Number(text(form, 'lesson'))
  const choice = text(form, 'accept')
  return submit(
    'decide-lesson',
    form,
    () => ({
      programme,
      lesson,
      accept: choice === 'accept' ? true : choice === 'decline' ? false : undefined,
      reason: text(form, 'reason'),
    }),
    () => lessonAddress(programme, lesson),
  )
}

export async function retireLesson(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const lesson = Number(text(form, 'lesson'))
  return submit(
    'retire-lesson',
    form,
    () => ({ programme, lesson, reason: text(form, 'reason') }),
    () => lessonAddress(programme, lesson),
  )
}

import type { ChangePreview } from '@/shared/gate/change-preview'
import type { WorksEffect } from '@/shared/gate/works-effect'

/** What a form knows after it was sent and not taken: why, and what was typed. */
export interface FormState {
  /** Why it was refused, for the head of the form. */
  readonly message?: string
  /** What is wrong by field. */
  readonly fields: Readonly<Record<string, string>>
  /** What was typed, by field; passwords are left out. */
  readonly typed: Readonly<Record<string, string>>
  /** Something to say when it was taken and the page stays. */
  readonly done?: string
  /** With `done`: something to copy now, since it is kept nowhere. */
  readonly shownOnce?: string
  /** What sending it would change, when only that was asked. */
  readonly preview?: ChangePreview
  /** The same of something of the works, in every programme that rests on it. */
  readonly worksEffect?: WorksEffect
}

export const UNTOUCHED: FormState = { fields: {}, typed: {} }

export type FormAction = (state: FormState, form: FormData) => Promise<FormState>

const SECRET = /password/i

/** What was typed, to be shown again. Files and passwords cannot be. */
export function typedIn(form: FormData): Record<string, string> {
  const typed: Record<string, string> = {}
  for (const [name, value] of form) {
    if (typeof value === 'string' && !SECRET.test(name) && !name.startsWith('$')) typed[name] = value
  }
  return typed
}

import { notationIn } from '@/app/forms/works-in-form'
import { decimalTyped } from '@/shared/quantity/decimal-typed'

/** A text field, trimmed; '' when it is not there. */
export function text(form: FormData, name: string): string {
  const value = form.get(name)
  return typeof value === 'string' ? value.trim() : ''
}

/**
 * A number as a person types it; a text that is none is passed on as it is, so
 * that the command's own sentence says so. Empty gives undefined.
 */
export function numberTyped(form: FormData, name: string): number | string | undefined {
  const typed = text(form, name)
  if (!typed) return undefined
  return decimalTyped(typed, notationIn(form).decimal) ?? typed
}

/** What a hidden box holds as JSON; undefined where it holds none. */
export function jsonTyped(form: FormData, name: string): unknown {
  try {
    return JSON.parse(text(form, name))
  } catch {
    return undefined
  }
}

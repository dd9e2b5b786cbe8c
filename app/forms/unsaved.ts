import { useEffect, useMemo, type FormEvent, type RefObject } from 'react'
import type { FormState } from '@/app/forms/form-state'

/** The forms of this page in which something is typed and not sent, or sent and not taken. */
const unsaved = new Set<object>()
/** Those that were sent and are not answered yet: what was typed comes back if it is refused. */
const underWay = new Set<object>()

/** Whether leaving or renewing the page would lose something. */
export const isUnsaved = (): boolean => unsaved.size > 0

/** Whether renewing the page now could lose an answer, and with it what was typed. */
export const isUnderWay = (): boolean => underWay.size > 0

interface Sending {
  /** What was answered last. */
  readonly state: FormState
  /** Whether an answer is waited for. */
  readonly pending: boolean
  /** Something inside the form. */
  readonly inside: RefObject<HTMLElement | null>
}

/** Has the browser ask before a page is left on which a form holds something that was not taken. */
export function useUnsaved({ state, pending, inside }: Sending) {
  const form = useMemo(() => ({}), [])
  useEffect(() => {
    if (state.message !== undefined || state.preview !== undefined) unsaved.add(form)
  }, [form, state])
  useEffect(() => {
    if (!pending) underWay.delete(form)
  }, [form, pending])
  useEffect(() => {
    // Typed before scripts were there to hear of it.
    const boxes = inside.current?.closest('form')?.elements ?? []
    if ([...boxes].some(isTypedInto)) unsaved.add(form)
    const ask = (event: BeforeUnloadEvent) => {
      if (unsaved.has(form)) event.preventDefault()
    }
    window.addEventListener('beforeunload', ask)
    return () => {
      unsaved.delete(form)
      underWay.delete(form)
      window.removeEventListener('beforeunload', ask)
    }
  }, [form, inside])
  return {
    typed: ({ target }: FormEvent) => {
      if (!isPassword(target)) unsaved.add(form)
    },
    sent: () => {
      unsaved.delete(form)
      underWay.add(form)
    },
  }
}

/** A password alone is nothing that would be missed. */
const isPassword = (box: unknown): boolean => box instanceof HTMLInputElement && box.type === 'password'

/** Whether a box holds something else than the page came with. */
function isTypedInto(box: Element): boolean {
  if (isPassword(box)) return false
  if (box instanceof HTMLTextAreaElement) return box.value !== box.defaultValue
  if (box instanceof HTMLInputElement)
    return ['checkbox', 'radio'].includes(box.type)
      ? box.checked !== box.defaultChecked
      : !['hidden', 'file'].includes(box.type) && box.value !== box.defaultValue
  return false
}

import { useEffect, useMemo, type FormEvent } from 'react'
import type { FormState } from '@/app/forms/form-state'

/** The forms of this page in which something is typed and not sent, or sent and not taken. */
const unsaved = new Set<object>()

/** Whether leaving or renewing the page would lose something. */
export const isUnsaved = (): boolean => unsaved.size > 0

/** Has the browser ask before a page is left on which a form holds something that was not taken. */
export function useUnsaved({ message, preview }: FormState) {
  const form = useMemo(() => ({}), [])
  useEffect(() => {
    if (message !== undefined || preview !== undefined) unsaved.add(form)
  }, [form, message, preview])
  useEffect(() => {
    const ask = (event: BeforeUnloadEvent) => {
      if (unsaved.has(form)) event.preventDefault()
    }
    window.addEventListener('beforeunload', ask)
    return () => {
      unsaved.delete(form)
      window.removeEventListener('beforeunload', ask)
    }
  }, [form])
  return {
    typed: ({ target }: FormEvent) => {
      // A password alone is nothing that would be missed.
      if (!(target instanceof HTMLInputElement && target.type === 'password')) unsaved.add(form)
    },
    sent: () => {
      unsaved.delete(form)
    },
  }
}

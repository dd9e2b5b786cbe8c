'use client'
import {
  createContext,
  useActionState,
  useContext,
  useEffect,
  useRef,
  useState,
  type FormEvent,
  type ReactNode,
} from 'react'
import { tooLargeToSend } from '@/app/forms/form-size'
import { UNTOUCHED, type FormAction, type FormState } from '@/app/forms/form-state'
import { useUnsaved } from '@/app/forms/unsaved'
import { useWorks, WorksFields } from '@/app/forms/works'
import { Notice } from '@/app/ui/notice'
import { decimalText } from '@/shared/quantity/decimal-typed'

const FormStateContext = createContext<FormState>(UNTOUCHED)

/** What the form around this field knows; for the fields themselves. */
export const useFormState = (): FormState => useContext(FormStateContext)

interface CommandFormProps {
  action: FormAction
  /** One per rendering of the page: the same form sent twice does nothing twice. */
  formKey: string
  /** Fields that are not asked for, such as the programme's code. */
  hidden?: Readonly<Record<string, string | number>>
  /** For screen readers, when no heading names the form. */
  label?: string
  className?: string
  children: ReactNode
}

/** A form that goes through a server action; it works before scripts load, and comes back with what was typed. */
export function CommandForm({ action, formKey, hidden = {}, label, className, children }: CommandFormProps) {
  const [state, send, pending] = useActionState(action, UNTOUCHED)
  const { notation } = useWorks()
  const head = useRef<HTMLDivElement>(null)
  const [tooLarge, setTooLarge] = useState<string>()
  const message = tooLarge ?? state.message
  useEffect(() => {
    if (message) head.current?.focus()
  }, [state, message])
  const unsaved = useUnsaved({ state, pending, inside: head })
  const stopTooLarge = (event: FormEvent<HTMLFormElement>) => {
    const message = tooLargeToSend(new FormData(event.currentTarget), state)
    if (message) event.preventDefault()
    else unsaved.sent()
    setTooLarge(message)
  }
  return (
    <FormStateContext value={state}>
      <form
        action={send}
        onSubmit={stopTooLarge}
        onInput={unsaved.typed}
        className={className}
        aria-label={label}
        noValidate
      >
        <input type="hidden" name="key" value={formKey} />
        {Object.entries(hidden).map(([name, value]) => (
          <input
            key={name}
            type="hidden"
            name={name}
            value={typeof value === 'number' ? decimalText(value, notation.decimal) : value}
          />
        ))}
        <WorksFields />
        <div ref={head} tabIndex={-1}>
          {message && (
            <Notice kind="refusal" announced>
              {message}
            </Notice>
          )}
          {state.done && (
            <Notice kind="success" announced>
              {state.done}
              {state.shownOnce && <code className="digest digest-full shown-once">{state.shownOnce}</code>}
            </Notice>
          )}
        </div>
        {children}
      </form>
    </FormStateContext>
  )
}

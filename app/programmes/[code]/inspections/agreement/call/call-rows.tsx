'use client'
import { useState, type KeyboardEvent } from 'react'
import { useFormState } from '@/app/forms/command-form'
import { useHydrated } from '@/app/forms/hydrated'
import { Button } from '@/app/ui/button'
import { DEFECT_KINDS } from '@/shared/records/inspection'
import { callMeantBy } from '../call-meant'

const NEW_ROWS = 30

/** A row per joint: its call. What is known of a joint is no matter of whoever calls it, and has no box here. */
export function CallRows({ joints }: { joints: readonly string[] }) {
  const { typed, fields } = useFormState()
  const [extra, setExtra] = useState(0)
  const hydrated = useHydrated()
  const laidOut = joints.length > 0
  const count = (laidOut ? joints.length : NEW_ROWS) + extra
  return (
    <div className="call-rows" onKeyDown={nextOnEnter}>
      <datalist id="calls">
        {['sound', ...DEFECT_KINDS].map((call) => (
          <option key={call} value={call} />
        ))}
      </datalist>
      {Array.from({ length: count }, (_, at) => {
        const box = (field: string) => `calls.${at}.${field}`
        const joint = joints[at]
        return (
          <div key={at} className="call-row" role="group" aria-label={joint ?? `Joint ${at + 1}`}>
            {joint === undefined ? (
              <Box name={box('joint')} label={`Joint ${at + 1}`} typed={typed} error={fields[box('joint')]} />
            ) : (
              <>
                <span className="call-joint">{joint}</span>
                <input type="hidden" name={box('joint')} value={joint} />
              </>
            )}
            <Box name={box('call')} label="Call" typed={typed} list="calls" error={fields[box('call')]} />
          </div>
        )
      })}
      {hydrated && !laidOut && (
        <Button kind="plain" onClick={() => setExtra(extra + 10)}>
          Ten more joints
        </Button>
      )}
    </div>
  )
}

/** Enter goes to the next box: a set half called is not sent by a slip. */
function nextOnEnter(event: KeyboardEvent<HTMLDivElement>) {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return
  event.preventDefault()
  const boxes = [...event.currentTarget.querySelectorAll<HTMLInputElement>('input.control')]
  boxes[boxes.indexOf(event.target) + 1]?.focus()
}

interface BoxProps {
  name: string
  label: string
  typed: Readonly<Record<string, string>>
  list?: string
  error?: string | undefined
}

/** One box, with the call that its letters mean beside it. */
function Box({ name, label, typed, list, error }: BoxProps) {
  const [value, setValue] = useState(typed[name] ?? '')
  const meant = list && value ? callMeantBy(value) : value
  return (
    <label className="call-box">
      <span>{label}</span>
      <input
        className="control"
        name={name}
        value={value}
        list={list}
        autoComplete="off"
        aria-invalid={error ? true : undefined}
        onChange={(event) => setValue(event.currentTarget.value)}
      />
      {meant !== value && <span className="field-hint">{meant}</span>}
      {error && <span className="field-error">{error}</span>}
    </label>
  )
}

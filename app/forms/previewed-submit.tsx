'use client'
import { useEffect, useRef, useState, type ComponentProps } from 'react'
import { useFormState } from '@/app/forms/command-form'
import { EffectByProgramme } from '@/app/forms/effect-by-programme'
import { SubmitButton } from '@/app/ui/submit-button'

type PreviewedSubmitProps = Pick<ComponentProps<typeof SubmitButton>, 'kind' | 'children'>

/** Sends a form of the works, or asks first what sending it would turn, in which programme. */
export function PreviewedSubmit(props: PreviewedSubmitProps) {
  return (
    <>
      <div className="form-actions">
        <SubmitButton {...props} />
        <PreviewButton />
      </div>
      <WhatItWouldTurn />
    </>
  )
}

/** Asks only; for a form whose other button is one of its own. */
export const PreviewButton = () => (
  <SubmitButton name="intent" value="preview" kind="quiet">
    What would turn
  </SubmitButton>
)

/** The answer; it is of what was sent, so that typing on takes it away. */
export function WhatItWouldTurn() {
  const state = useFormState()
  const place = useRef<HTMLDivElement>(null)
  const [typedAfter, setTypedAfter] = useState<typeof state>()
  useEffect(() => {
    const form = place.current?.closest('form')
    const typedOn = () => setTypedAfter(state)
    form?.addEventListener('input', typedOn)
    return () => form?.removeEventListener('input', typedOn)
  }, [state])
  const effect = typedAfter === state ? undefined : state.worksEffect
  return (
    <div ref={place} className="would-live" role="status">
      {effect && <EffectByProgramme effect={effect} />}
    </div>
  )
}

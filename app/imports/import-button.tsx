'use client'
import { useRef, useState, type MouseEvent } from 'react'
import { Button } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { Progress } from '@/app/ui/progress'
import { linesOf } from '@/app/ui/follow-lines'
import type { ImportStep } from './import-steps'

interface ImportButtonProps {
  /** Where the import runs and says how far it is. */
  run: string
  children: string
}

/**
 * Confirms an import. With scripts it says how far it is; without them, and when it is refused,
 * the form itself is sent, which puts every reason at its field.
 */
export function ImportButton({ run, children }: ImportButtonProps) {
  const [step, setStep] = useState<{ read: number; of: number }>()
  const [broken, setBroken] = useState(false)
  const plain = useRef(false)
  const confirm = async (event: MouseEvent<HTMLButtonElement>) => {
    const { form } = event.currentTarget
    if (plain.current || !form) {
      plain.current = false
      return
    }
    event.preventDefault()
    const button = event.currentTarget
    setBroken(false)
    setStep({ read: 0, of: 1 })
    try {
      const response = await fetch(run, { method: 'POST', body: new FormData(form) })
      // The plain form says why: a session that ended, a right that was taken.
      if (!response.ok) {
        setStep(undefined)
        plain.current = true
        return form.requestSubmit(button)
      }
      for await (const said of linesOf<ImportStep>(response)) {
        if ('address' in said) return window.location.assign(said.address)
        if ('refused' in said) {
          setStep(undefined)
          plain.current = true
          return form.requestSubmit(button)
        }
        setStep(said)
      }
      throw new Error('The answer broke off.')
    } catch {
      setStep(undefined)
      setBroken(true)
    }
  }
  return (
    <>
      {broken && (
        <Notice kind="warning" announced title="The connection broke">
          Press again: what was stored already is not stored twice.
        </Notice>
      )}
      {step && (
        <Progress label="Importing" done={toKb(step.read)} of={Math.max(1, toKb(step.of))} what="kB" />
      )}
      <Button type="submit" kind="primary" pending={step !== undefined} onClick={confirm}>
        {children}
      </Button>
    </>
  )
}

const toKb = (bytes: number): number => Math.round(bytes / 1024)

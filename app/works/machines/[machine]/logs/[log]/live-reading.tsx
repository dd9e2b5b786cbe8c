'use client'
import { useEffect, useRef, useState, type ReactNode } from 'react'
import { WORKS_FIELDS } from '@/app/forms/works-in-form'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { WANTS_REMEDY, type Verdict } from '@/shared/rules/finding'

interface WouldFind {
  readonly title: string
  readonly before: Verdict
  readonly verdict: Verdict
  readonly found: string
  readonly remedy?: string
}

const PAUSE_MS = 350

/** The fields of one reading; while they are filled in, says what the reading would mean. */
export function LiveReading({ address, children }: { address: string; children: ReactNode }) {
  const fields = useRef<HTMLDivElement>(null)
  const [asked, setAsked] = useState('')
  const [findings, setFindings] = useState<readonly WouldFind[]>([])
  useEffect(() => {
    if (!asked) return
    const stop = new AbortController()
    const timer = setTimeout(() => {
      fetch(`${address}?${asked}`, { signal: stop.signal })
        .then((answer) => answer.json())
        .then((answer: { findings: readonly WouldFind[] }) => setFindings(answer.findings))
        .catch(() => undefined)
    }, PAUSE_MS)
    return () => {
      clearTimeout(timer)
      stop.abort()
    }
  }, [address, asked])
  const read = () => {
    const form = fields.current?.closest('form')
    if (form) setAsked(askedOf(new FormData(form)))
  }
  return (
    <>
      <div ref={fields} className="form-narrow" onInput={read}>
        {children}
      </div>
      <div role="status" className="live-findings">
        {findings.map(({ title, before, verdict, found, remedy }) => (
          <p key={title}>
            <strong>{title}:</strong>{' '}
            {before !== verdict && (
              <>
                <VerdictMark verdict={before} /> →{' '}
              </>
            )}
            <VerdictMark verdict={verdict} /> {found} {WANTS_REMEDY[verdict] && remedy}
          </p>
        ))}
      </div>
    </>
  )
}

/** The reading as typed, for the address. */
function askedOf(form: FormData): string {
  const cells = [...form].flatMap(([name, value]) => {
    if (typeof value !== 'string') return []
    if (name.startsWith('readings.0.')) return [[name.slice('readings.0.'.length), value]]
    return Object.values<string>(WORKS_FIELDS).includes(name) ? [[name, value]] : []
  })
  return new URLSearchParams(cells).toString()
}

'use client'
import { useState, type FormEvent } from 'react'
import { Notice } from '@/app/ui/notice'
import { Progress } from '@/app/ui/progress'
import { TextField } from '@/app/ui/field'
import { Button } from '@/app/ui/button'

interface UploadFormProps {
  formKey: string
  action: string
  /** Kinds of evidence to choose from; left out where the file is of no kind. */
  kinds?: readonly string[]
  /** Why the file was not taken, and what was typed, when no scripts ran. */
  answer: { readonly refused?: string; readonly kind?: string; readonly note?: string }
}

const LARGEST_BYTES = 50 * 1024 * 1024

/** Attaches a file: a plain form without scripts; with them it says how far the upload is, and keeps what was typed. */
export function UploadForm({ formKey, action, kinds, answer }: UploadFormProps) {
  const [sent, setSent] = useState<{ done: number; of: number }>()
  const [refused, setRefused] = useState(answer.refused)
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    const form = event.currentTarget
    const file = (form.elements.namedItem('file') as HTMLInputElement).files?.[0]
    if (!file) return setRefused('Choose a file.')
    if (file.size > LARGEST_BYTES)
      return setRefused(
        `${file.name} has ${(file.size / 1024 / 1024).toFixed(1)} MB; a file may have 50 MB. Split it, or attach a link.`,
      )
    setRefused(undefined)
    upload(form, action, setSent, setRefused)
  }
  return (
    <form
      action={action}
      method="post"
      encType="multipart/form-data"
      onSubmit={send}
      className="form-stack"
      aria-label="Attach a file"
    >
      <input type="hidden" name="key" value={formKey} />
      {refused && (
        <Notice kind="refusal" announced title="The file was not attached">
          {refused}
        </Notice>
      )}
      <div className="form-row">
        {kinds && (
          <TextField
            name="kind"
            label="Kind of evidence"
            defaultValue={answer.kind || kinds[0]}
            list={`${formKey}-kinds`}
            required
          />
        )}
        <TextField name="note" label="Note" defaultValue={answer.note} optional />
        <TextField
          name="file"
          type="file"
          label="File"
          hint="PDF, picture, text, CSV, office document or fabrication file, up to 50 MB."
          required
        />
      </div>
      <datalist id={`${formKey}-kinds`}>
        {kinds?.map((kind) => (
          <option key={kind} value={kind} />
        ))}
      </datalist>
      {sent && <Progress label="Sending" done={sent.done} of={sent.of} what="kB" />}
      <Button type="submit" kind="primary" pending={sent !== undefined}>
        Attach the file
      </Button>
    </form>
  )
}

/** A plain request cannot say how much was sent; this one can. */
function upload(
  form: HTMLFormElement,
  action: string,
  tell: (sent: { done: number; of: number } | undefined) => void,
  refuse: (message: string) => void,
): void {
  const request = new XMLHttpRequest()
  const fail = (message: string) => {
    tell(undefined)
    refuse(message)
  }
  request.upload.onprogress = ({ loaded, total }) =>
    tell({ done: Math.round(loaded / 1024), of: Math.max(1, Math.round(total / 1024)) })
  request.onerror = () => fail('The connection broke while it was sent. Nothing was attached; try again.')
  request.onload = () => {
    const { address, message } = answerIn(request)
    if (!address) return fail(message ?? 'The server did not take it. Try again.')
    window.location.assign(address)
    window.location.reload()
  }
  request.open('POST', action)
  request.setRequestHeader('accept', 'application/json')
  request.send(new FormData(form))
}

/** What the server said; something between that answers for it says nothing we know. */
function answerIn({ responseText }: XMLHttpRequest): { address?: string; message?: string } {
  try {
    return JSON.parse(responseText) as { address?: string; message?: string }
  } catch {
    return {}
  }
}

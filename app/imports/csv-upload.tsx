'use client'
import { useState, type FormEvent } from 'react'
import { Button } from '@/app/ui/button'
import { TextField } from '@/app/ui/field'
import { Notice } from '@/app/ui/notice'
import { Progress } from '@/app/ui/progress'

interface CsvUploadProps {
  action: string
  hidden?: Readonly<Record<string, string>>
  hint?: string
  refused?: string | undefined
}

/** Sends a CSV file for preview: a plain form without scripts; with them it says how far it is. */
export function CsvUpload({ action, hidden = {}, hint, refused: before }: CsvUploadProps) {
  const [sent, setSent] = useState<{ done: number; of: number }>()
  const [refused, setRefused] = useState(before)
  const send = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault()
    const request = new XMLHttpRequest()
    const fail = (message: string) => {
      setSent(undefined)
      setRefused(message)
    }
    request.upload.onprogress = ({ loaded, total }) =>
      setSent({ done: Math.round(loaded / 1024), of: Math.max(1, Math.round(total / 1024)) })
    request.onerror = () =>
      fail('The connection broke while the file was sent. Nothing was imported; try again.')
    request.onload = () => {
      const answer = JSON.parse(request.responseText || '{}') as { address?: string; message?: string }
      if (answer.address) window.location.assign(answer.address)
      else fail(answer.message ?? 'The server did not take the file. Try again.')
    }
    request.open('POST', action)
    request.setRequestHeader('accept', 'application/json')
    request.send(new FormData(event.currentTarget))
  }
  return (
    <form
      action={action}
      method="post"
      encType="multipart/form-data"
      onSubmit={send}
      className="form-narrow"
      aria-label="Import a CSV file"
    >
      {Object.entries(hidden).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {refused && (
        <Notice kind="refusal" announced title="The file was not taken">
          {refused}
        </Notice>
      )}
      <TextField
        name="file"
        type="file"
        label="CSV or XLSX file"
        accept=".csv,.txt,.tsv,.xlsx,text/csv,text/plain"
        hint={
          hint ??
          'The first line holds the headings; of a workbook the first sheet is read. You see a preview before anything is stored.'
        }
        required
      />
      {sent && <Progress label="Sending" done={sent.done} of={sent.of} what="kB" />}
      <Button type="submit" pending={sent !== undefined}>
        Preview the file
      </Button>
    </form>
  )
}

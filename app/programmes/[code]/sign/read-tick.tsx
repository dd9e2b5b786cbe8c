'use client'
import { useFormState } from '@/app/forms/command-form'
import { TickField } from '@/app/ui/field'

interface ReadTickProps {
  item: string
  title: string
  digest: string
  /** It confirms an earlier approval. */
  confirms: boolean
}

/** The tick that an item was read. After a refusal it stays, except where the item has to be read again. */
export function ReadTick({ item, title, digest, confirms }: ReadTickProps) {
  const { fields, typed, message } = useFormState()
  const name = `items.${item}`
  const error = fields[name]
  return (
    <>
      {confirms && <input type="hidden" name={`confirms.${item}`} value="yes" />}
      <TickField
        key={`${digest} ${message ?? ''}`}
        name={name}
        value={digest}
        label={<strong>{title}</strong>}
        defaultChecked={name in typed && !error}
        data-confirms={confirms || undefined}
        error={error}
      />
    </>
  )
}

'use client'
import { useFormState } from '@/app/forms/command-form'

/** The revision that saving would replace; after a refusal because of a newer one, that one. */
export function SeenRevision({ seen }: { seen: number }) {
  const { fields } = useFormState()
  return <input type="hidden" name="seen" value={fields['seen'] ?? seen} />
}

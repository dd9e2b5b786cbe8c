import type { FormState } from '@/app/forms/form-state'

/** What the server takes of one form (`bodySizeLimit` in next.config.ts), in MB of 1024 × 1024 bytes. */
const LARGEST_FORM_MB = 2
/** Around each field the browser puts a line that parts it from the next, and its name. */
const AROUND_A_FIELD_BYTES = 200

/**
 * Why a form is too large to be sent, undefined when it is not. With it goes what the form knows from the time before,
 * which after a refusal is all that was typed, once more.
 */
export function tooLargeToSend(form: FormData, state: FormState): string | undefined {
  const bytes =
    bytesOf(JSON.stringify(state)) +
    [...form].reduce((sum, [name, value]) => sum + fieldBytes(name, value), 0)
  const megabytes = bytes / 1024 / 1024
  return megabytes <= LARGEST_FORM_MB
    ? undefined
    : `The form takes ${megabytes.toFixed(1)} MB, and one may take ${LARGEST_FORM_MB} MB. Nothing was sent, and all that you typed is still here: shorten it, or send it in parts.`
}

const fieldBytes = (name: string, value: FormDataEntryValue): number =>
  AROUND_A_FIELD_BYTES + bytesOf(name) + (typeof value === 'string' ? bytesOf(value) : value.size)

const bytesOf = (text: string): number => new TextEncoder().encode(text).length

'use server'
import { calendarAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { send } from '@/app/forms/submit'
import { newSecretToken } from '@/lib/auth/secret-token'
import { settings } from '@/lib/settings/settings'

/** Makes a secret address and shows it in the answer, the only time it is ever seen. */
export async function createCalendarAddress(_state: FormState, form: FormData): Promise<FormState> {
  const { token, tokenHash } = newSecretToken()
  const outcome = await send('create-calendar-address', form, () => ({ tokenHash }))
  if ('fields' in outcome) return outcome
  return {
    fields: {},
    typed: {},
    done: 'Your calendar’s address, shown this once; give it to your calendar program now.',
    shownOnce: `${settings().url}${calendarAddress(token)}`,
  }
}

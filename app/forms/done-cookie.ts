import { DONE_COOKIE } from '@/app/forms/done-cookie-name'
import { cookies } from 'next/headers'
import { faceOf, isCommandName, type CommandName } from '@/shared/commands/all-faces'

/** What was just done, so that the page it led to says so: the command, and the number of its entry. */
export interface JustDone {
  readonly done: string
  readonly seq: number
}

/** Long enough to be led to the next page; the browser takes it away as soon as it was said. */
const SAID_WITHIN_S = 20

/** Tells the page that comes next what was done. It names nothing but the command and the entry's number. */
export async function tellDone(command: CommandName, seq: number): Promise<void> {
  ;(await cookies()).set(DONE_COOKIE, `${command}.${seq}`, {
    maxAge: SAID_WITHIN_S,
    sameSite: 'lax',
    path: '/',
  })
}

/** What was just done by this browser, if it is still to be said. */
export async function justDone(): Promise<JustDone | undefined> {
  const [command = '', seq = ''] = ((await cookies()).get(DONE_COOKIE)?.value ?? '').split('.')
  if (!isCommandName(command) || !/^\d{1,15}$/.test(seq)) return undefined
  return { done: faceOf(command).done, seq: Number(seq) }
}

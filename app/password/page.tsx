import { randomUUID } from 'node:crypto'
import { redirect } from 'next/navigation'
import { passwordAddress, signInAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { Day } from '@/app/ui/date'
import { Notice } from '@/app/ui/notice'
import { SubmitButton } from '@/app/ui/submit-button'
import { SHORTEST_PASSWORD } from '@/lib/auth/password'
import { allResets, resetBefore } from '@/lib/auth/password-reset'
import { signedIn } from '@/lib/auth/session'
import { sessionsOf } from '@/lib/auth/session-store'
import { settings } from '@/lib/settings/settings'
import { changePassword } from './actions'
import { OwnSessions } from './own-sessions'

export const metadata = { title: 'Your password – Liquidus' }

export default async function PasswordPage() {
  const person = await signedIn()
  if (!person) redirect(signInAddress(passwordAddress()))
  const sessions = await sessionsOf(person.personId)
  const reset = resetBefore(await allResets(), person.personId, new Date())
  return (
    <DeskSheet
      person={person}
      at={passwordAddress()}
      title="Your password"
      supplement={`${person.name}, ${person.email}`}
    >
      {person.mustChangePassword && (
        <Notice kind="info" title="Choose a password of your own">
          The one you signed in with was for one use.
        </Notice>
      )}
      {reset && (
        <Notice kind="warning" title="An administrator gave you a password">
          {reset.byName} did, on <Day at={reset.at} />. It stands beside everything you have signed since, for
          they could have signed in your name. If you did not ask for it, tell your programme’s lead.
        </Notice>
      )}
      {person.hasPassword ? (
        <CommandForm
          action={changePassword}
          formKey={randomUUID()}
          label="Change your password"
          className="form-narrow"
        >
          <TextBox
            name="password"
            type="password"
            label="Password until now"
            autoComplete="current-password"
            required
          />
          <TextBox
            name="newPassword"
            type="password"
            label="New password"
            hint={`${SHORTEST_PASSWORD} characters or more; several words do well. Not your name or address, nor what others would try.`}
            autoComplete="new-password"
            required
          />
          <TextBox
            name="newPasswordAgain"
            type="password"
            label="New password again"
            autoComplete="new-password"
            required
          />
          <SubmitButton>Change the password</SubmitButton>
        </CommandForm>
      ) : (
        <p>You sign in at your identity provider, and change your password there.</p>
      )}
      <OwnSessions sessions={sessions} current={person.sessionId} idleMinutes={settings().idleMinutes} />
    </DeskSheet>
  )
}

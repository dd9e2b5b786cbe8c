import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { signIn } from '@/app/sign-in/actions'
import { ProviderForm } from '@/app/sign-in/provider-form'
import { Notice } from '@/app/ui/notice'
import { Sheet } from '@/app/ui/sheet'
import { SubmitButton } from '@/app/ui/submit-button'
import { TitleBlock } from '@/app/ui/title-block'
import { settings } from '@/lib/settings/settings'

export const metadata = { title: 'Sign in – Liquidus' }

interface SignInPageProps {
  searchParams: Promise<{ then?: string; error?: string }>
}

export default async function SignInPage({ searchParams }: SignInPageProps) {
  const { then = '', error } = await searchParams
  const { identityProvider } = settings()
  return (
    <Sheet
      place={[{ text: 'Sign in' }]}
      titleBlock={<TitleBlock title="Sign in" supplement="Soldered joints, planned to last" cells={[]} />}
    >
      {error && (
        <Notice kind="refusal" announced title="The sign-in was not taken">
          {error === 'unknown-person'
            ? 'Your identity provider knows you, but nobody has added you here. Ask an administrator.'
            : 'The identity provider did not finish the sign-in. Try again, or ask an administrator.'}
        </Notice>
      )}
      {identityProvider && <ProviderForm name={identityProvider.name} then={then} />}
      <CommandForm
        action={signIn}
        formKey={randomUUID()}
        hidden={{ then }}
        label="Sign in here"
        className="form-narrow"
      >
        <TextBox
          name="email"
          type="email"
          label="E-mail address"
          autoComplete="username"
          required
          autoFocus={!identityProvider}
        />
        <TextBox name="password" type="password" label="Password" autoComplete="current-password" required />
        <SubmitButton kind={identityProvider ? 'quiet' : 'primary'}>Sign in</SubmitButton>
      </CommandForm>
    </Sheet>
  )
}

import type { NextAuthOptions } from 'next-auth'
import CredentialsProvider from 'next-auth/providers/credentials'
import type { OAuthConfig } from 'next-auth/providers/oauth'
import { checkPassword, type Checked } from '@/lib/auth/check-password'
import { personOfIdentity } from '@/lib/auth/identity'
import { claimsInForce, SESSION_SECONDS } from '@/lib/auth/session-claims'
import { endSessionOf, openSession, personOfSession } from '@/lib/auth/session-store'
import { noteSignIn, noteSignOut } from '@/lib/auth/sign-in-log'
import type { Visitor } from '@/lib/auth/visitor'
import { log } from '@/lib/log/log'
import { settings, type IdentityProvider } from '@/lib/settings/settings'

/**
 * How people sign in: by password, and at the installation's identity provider when one is set. `onChecked` hears
 * what became of a password, of which next-auth itself tells no more than yes or no.
 */
export function authOptions(visitor: Visitor, onChecked?: (checked: Checked) => void): NextAuthOptions {
  const { identityProvider, sessionSecret } = settings()
  return {
    ...(sessionSecret ? { secret: sessionSecret } : {}),
    session: { strategy: 'jwt', maxAge: SESSION_SECONDS },
    jwt: { maxAge: SESSION_SECONDS },
    logger: NEXT_AUTH_LOG,
    pages: { signIn: '/sign-in', error: '/sign-in' },
    providers: [
      CredentialsProvider({
        name: 'password',
        credentials: { email: { type: 'email' }, password: { type: 'password' } },
        async authorize(credentials) {
          const { email = '', password = '' } = credentials ?? {}
          const checked = await checkPassword({ email, password }, visitor)
          onChecked?.(checked)
          return checked.ok ? { id: checked.personId, credentialEpoch: checked.credentialEpoch } : null
        },
      }),
      ...(identityProvider ? [openIdConnect(identityProvider)] : []),
    ],
    callbacks: {
      async signIn({ account, profile }) {
        if (account?.type !== 'oauth') return true
        if (await personOfIdentity(account.providerAccountId, profile)) return true
        noteSignIn(visitor, { refused: 'nobody of that identity', by: 'identity provider' })
        return '/sign-in?error=unknown-person'
      },
      async jwt({ token, account, profile, user }) {
        if (!account) return (await stillLasts(token)) ? token : {}
        const oauth = account.type === 'oauth'
        const person = oauth
          ? await personOfIdentity(account.providerAccountId, profile)
          : { id: user.id, credentialEpoch: (user as { credentialEpoch?: number }).credentialEpoch ?? 0 }
        if (!person) return token
        noteSignIn(visitor, { personId: person.id, ...(oauth ? { by: 'identity provider' } : {}) })
        const signedInAt = askedAt(profile, Math.floor(Date.now() / 1000))
        return {
          ...(await openSession(
            { personId: person.id, credentialEpoch: person.credentialEpoch, signedInAt },
            visitor,
          )),
        }
      },
      session: ({ session, token }) => ({ ...session, claims: token }),
    },
    events: {
      async signOut({ token }) {
        const claims = claimsInForce(token, Date.now() / 1000)
        if (!claims) return
        await endSessionOf(claims.personId, claims.sessionId)
        noteSignOut(claims.personId)
      },
    },
  }
}

/** Whether next-auth may renew a session that it was shown. */
async function stillLasts(token: unknown): Promise<boolean> {
  const claims = claimsInForce(token, Date.now() / 1000)
  return claims !== undefined && (await personOfSession(claims)) !== undefined
}

/**
 * When the person last showed who they are, epoch seconds: what the provider says of it, for whoever sits at an
 * open browser can take `prompt=login` out of the address. Source: OpenID Connect Core 1.0, sections 2 and 3.1.2.1.
 */
function askedAt(profile: object | undefined, nowS: number): number {
  const said = (profile as { auth_time?: unknown } | undefined)?.auth_time
  return typeof said === 'number' ? Math.min(said, nowS) : nowS
}

/** What next-auth has to say goes into our log, a line each, with secrets hidden. */
const NEXT_AUTH_LOG = {
  error: (code: string, metadata: unknown) => log.error('next-auth reports an error.', { code, metadata }),
  warn: (code: string) => log.warn('next-auth warns.', { code }),
  debug: (code: string, metadata: unknown) => log.debug('next-auth says.', { code, metadata }),
}

const openIdConnect = ({
  issuer,
  clientId,
  clientSecret,
  name,
}: IdentityProvider): OAuthConfig<Record<string, unknown>> => ({
  id: 'oidc',
  name,
  type: 'oauth',
  wellKnown: `${issuer}/.well-known/openid-configuration`,
  clientId,
  clientSecret,
  idToken: true,
  userinfo: { request: ({ tokens, client }) => claimsOf(tokens, client) },
  checks: ['pkce', 'state', 'nonce'],
  // A signature needs a fresh sign-in, so the provider is always asked to ask, and to say when it did.
  authorization: { params: { scope: 'openid email profile', prompt: 'login', max_age: 0 } },
  profile: (profile) => ({ id: String(profile['sub']) }),
})

/** The identity token's claims; a provider that leaves the address out of it is asked for the rest. */
async function claimsOf(
  tokens: { claims?: () => object; access_token?: string | undefined },
  client: { userinfo: (accessToken: string) => Promise<object> },
): Promise<Record<string, unknown>> {
  const claims = { ...tokens.claims?.() } as Record<string, unknown>
  if (claims['email'] || !tokens.access_token) return claims
  return { ...(await client.userinfo(tokens.access_token)), ...claims }
}

import type { NextAuthOptions } from 'next-auth'
import CredentialsProvider from 'next-auth/providers/credentials'
import type { OAuthConfig } from 'next-auth/providers/oauth'
import { checkPassword } from '@/lib/auth/check-password'
import { personOfIdentity } from '@/lib/auth/identity'
import { SESSION_SECONDS, type SessionClaims } from '@/lib/auth/session-claims'
import { log } from '@/lib/log/log'
import { settings, type IdentityProvider } from '@/lib/settings/settings'

/** How people sign in: by password, and at the installation's identity provider when one is set. */
export function authOptions(): NextAuthOptions {
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
          const checked = await checkPassword(credentials?.email ?? '', credentials?.password ?? '')
          return checked.ok ? { id: checked.personId, credentialEpoch: checked.credentialEpoch } : null
        },
      }),
      ...(identityProvider ? [openIdConnect(identityProvider)] : []),
    ],
    callbacks: {
      async signIn({ account, profile }) {
        if (account?.type !== 'oauth') return true
        return (await personOfIdentity(account.providerAccountId, profile))
          ? true
          : '/sign-in?error=unknown-person'
      },
      async jwt({ token, account, profile, user }) {
        if (!account) return token
        const person =
          account.type === 'oauth'
            ? await personOfIdentity(account.providerAccountId, profile)
            : { id: user.id, credentialEpoch: (user as { credentialEpoch?: number }).credentialEpoch ?? 0 }
        if (!person) return token
        const signedInAt = askedAt(profile, Math.floor(Date.now() / 1000))
        return {
          personId: person.id,
          credentialEpoch: person.credentialEpoch,
          signedInAt,
        } satisfies SessionClaims
      },
      session: ({ session, token }) => ({ ...session, claims: token }),
    },
  }
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

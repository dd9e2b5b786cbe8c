import { guarded } from '@/app/guard/guarded'
import { readsInstallation } from '@/app/guard/rights'
import { fileResponse } from '@/lib/exports/text-response'
import { bundleText } from '@/lib/exports/trail-bundle'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

const INSTALLATION = { id: INSTALLATION_TRAIL, code: INSTALLATION_TRAIL, title: 'People and instruments' }

/** The installation's own trail as a file that the standalone verifier checks. */
export const GET = guarded(readsInstallation, () =>
  fileResponse(
    bundleText(INSTALLATION, new Date().toISOString()),
    'installation-trail.json',
    'application/json',
  ),
)

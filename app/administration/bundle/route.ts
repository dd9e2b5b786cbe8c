import { installationRefusal } from '@/app/administration/reader'
import { fileResponse } from '@/lib/exports/text-response'
import { bundleText } from '@/lib/exports/trail-bundle'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

/** The installation's own trail as a file that the standalone verifier checks. */
export async function GET(): Promise<Response> {
  const installation = { id: INSTALLATION_TRAIL, code: INSTALLATION_TRAIL, title: 'People and instruments' }
  return (
    (await installationRefusal()) ??
    fileResponse(
      bundleText(installation, new Date().toISOString()),
      'installation-trail.json',
      'application/json',
    )
  )
}

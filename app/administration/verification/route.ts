import { installationRefusal } from '@/app/administration/reader'
import { linesResponse } from '@/lib/exports/text-response'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { verifyStored } from '@/lib/trail/verify-stored'

/** The verification of the installation's own trail, one JSON value a line. */
export async function GET(): Promise<Response> {
  return (await installationRefusal()) ?? linesResponse(verifyStored(INSTALLATION_TRAIL))
}

import { guarded } from '@/app/guard/guarded'
import { readsInstallation } from '@/app/guard/rights'
import { linesResponse } from '@/lib/exports/text-response'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { verifyStored } from '@/lib/trail/verify-stored'

/** The verification of the installation's own trail, one JSON value a line. */
export const GET = guarded(readsInstallation, () => linesResponse(verifyStored(INSTALLATION_TRAIL)))

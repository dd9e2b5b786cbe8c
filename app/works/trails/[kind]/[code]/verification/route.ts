import { guarded } from '@/app/guard/guarded'
import { readsWorksTrail } from '@/app/works/reads-works-trail'
import { linesResponse } from '@/lib/exports/text-response'
import { verifyStored } from '@/lib/trail/verify-stored'

/** The verification as it goes on: one JSON value a line, the verdict last. */
export const GET = guarded(readsWorksTrail, ({ right: { id } }) => linesResponse(verifyStored(id)))

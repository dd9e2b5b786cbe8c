import { guarded } from '@/app/guard/guarded'
import { readsProgramme } from '@/app/guard/rights'
import { linesResponse } from '@/lib/exports/text-response'
import { verifyStored } from '@/lib/trail/verify-stored'

/** The verification as it goes on: one JSON value a line, the verdict last. */
export const GET = guarded(readsProgramme, ({ right: view }) =>
  linesResponse(verifyStored(view.state.programme.id)),
)

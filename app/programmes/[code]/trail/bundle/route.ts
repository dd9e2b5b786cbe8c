import { guarded } from '@/app/guard/guarded'
import { readsProgramme } from '@/app/guard/rights'
import { fileResponse } from '@/lib/exports/text-response'
import { bundleText } from '@/lib/exports/trail-bundle'

/** The whole trail as one file that the standalone verifier checks. */
export const GET = guarded(readsProgramme, ({ right: view }) => {
  const { programme } = view.state
  return fileResponse(
    bundleText(programme, new Date().toISOString()),
    `${programme.code}-trail.json`,
    'application/json',
  )
})

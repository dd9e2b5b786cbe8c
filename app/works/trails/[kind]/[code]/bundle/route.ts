import { guarded } from '@/app/guard/guarded'
import { readsWorksTrail } from '@/app/works/reads-works-trail'
import { fileResponse } from '@/lib/exports/text-response'
import { bundleText } from '@/lib/exports/trail-bundle'
import { WORKS_KIND_NAMES } from '@/shared/works/works-kind'

/** The whole trail as one file that the standalone verifier checks. */
export const GET = guarded(readsWorksTrail, ({ right: { id, kind, code } }) =>
  fileResponse(
    bundleText({ id, code, title: WORKS_KIND_NAMES[kind] }, new Date().toISOString()),
    `${kind}-${code}-trail.json`,
    'application/json',
  ),
)

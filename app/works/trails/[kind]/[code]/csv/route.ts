import { guarded } from '@/app/guard/guarded'
import { readsWorksTrail } from '@/app/works/reads-works-trail'
import { trailsResponse } from '@/lib/exports/tables/trail-table'
import { worksSubjectName } from '@/shared/works/works-kind'

/** The trail as a table for a spreadsheet, CSV or, where asked for, XLSX; for proof, take the bundle. */
export const GET = guarded(readsWorksTrail, ({ request, right }) =>
  trailsResponse(
    [{ id: right.id, code: worksSubjectName(right) }],
    `${right.kind}-${right.code}-trail`,
    new URL(request.url).searchParams.get('as'),
  ),
)

import { administrationAddress } from '@/app/addresses'
import { Section } from '@/app/ui/section'
import { type TrailPage, type TrailSearch } from '@/lib/queries/trail'
import type { StoredVerdict } from '@/shared/stored/stored-verdict'
import { TakeTrail, TrailFound, TrailProof } from '@/app/programmes/[code]/trail/trail-parts'

interface InstallationTrailProps {
  search: TrailSearch
  page: TrailPage
  verdict: StoredVerdict | undefined
}

/** The chain of what is done outside any programme: people and instruments. */
export function InstallationTrail({ search, page, verdict }: InstallationTrailProps) {
  const at = administrationAddress()
  return (
    <Section
      id="trail"
      heading="The installation’s trail"
      lead={`What was done to people and instruments; ${page.found} found, newest first`}
      aside={<TakeTrail at={at} />}
    >
      <TrailProof at={at} verdict={verdict} />
      <TrailFound at={at} part="trail" search={search} page={page} />
    </Section>
  )
}

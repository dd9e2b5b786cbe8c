import { administrationAddress } from '@/app/addresses'
import { Entries } from '@/app/programmes/[code]/trail/entries'
import { SearchForm } from '@/app/programmes/[code]/trail/search-form'
import { trailPageAddress } from '@/app/programmes/[code]/trail/page-address'
import { Verdict } from '@/app/programmes/[code]/trail/verdict'
import { VerifyButton } from '@/app/programmes/[code]/trail/verify-button'
import { Empty } from '@/app/ui/empty'
import { Pagination } from '@/app/ui/pagination'
import { TakeTable } from '@/app/ui/take-table'
import { Section } from '@/app/ui/section'
import { ENTRIES_A_PAGE, type TrailPage, type TrailSearch } from '@/lib/queries/trail'
import type { StoredVerdict } from '@/shared/stored/stored-verdict'

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
      aside={
        <div className="mark-row">
          <a href={`${at}/bundle`}>Export for the standalone verifier</a>
          <TakeTable address={`${at}/csv`} what="All entries" />
        </div>
      }
    >
      {verdict && <Verdict verdict={verdict} />}
      <VerifyButton verification={`${at}/verification`} withoutScripts={at} />
      <SearchForm search={search} page={page} />
      {page.entries.length > 0 ? (
        <Entries entries={page.entries} />
      ) : (
        <Empty title="Nothing found">Look for less, or for other words.</Empty>
      )}
      <Pagination
        label="Pages of the trail"
        page={search.page}
        pages={Math.ceil(page.found / ENTRIES_A_PAGE)}
        addressOf={(to) => `${trailPageAddress(at, search, to)}#trail`}
      />
    </Section>
  )
}

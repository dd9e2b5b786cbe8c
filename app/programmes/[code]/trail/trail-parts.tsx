import { Empty } from '@/app/ui/empty'
import { Pagination } from '@/app/ui/pagination'
import { TakeTable } from '@/app/ui/take-table'
import { ENTRIES_A_PAGE, type TrailPage, type TrailSearch } from '@/lib/queries/trail'
import type { StoredVerdict } from '@/shared/stored/stored-verdict'
import { Entries } from './entries'
import { trailPageAddress } from './page-address'
import { SearchForm } from './search-form'
import { Verdict } from './verdict'
import { VerifyButton } from './verify-button'

/** Ways to take a trail along: for the standalone verifier, and as a table. */
export const TakeTrail = ({ at }: { at: string }) => (
  <div className="mark-row">
    <a href={`${at}/bundle`}>Export for the standalone verifier</a>
    <TakeTable address={`${at}/csv`} what="All entries" />
  </div>
)

/** What a verification found, if one was asked for without scripts, and the button for one. */
export const TrailProof = ({ at, verdict }: { at: string; verdict: StoredVerdict | undefined }) => (
  <>
    {verdict && <Verdict verdict={verdict} />}
    <VerifyButton verification={`${at}/verification`} withoutScripts={at} />
  </>
)

interface TrailFoundProps {
  at: string
  /** The part of the page at `at` that the entries are, where it has others. */
  part?: string
  search: TrailSearch
  page: TrailPage
  /** Of the programme that the trail belongs to. */
  code?: string
}

/** The search of a trail and the entries it found, in pages. */
export const TrailFound = ({ at, part, search, page, code }: TrailFoundProps) => (
  <>
    <SearchForm search={search} page={page} />
    {page.entries.length > 0 ? (
      <Entries entries={page.entries.map((entry) => ({ ...entry, code }))} />
    ) : (
      <Empty title="Nothing found">Look for less, or for other words.</Empty>
    )}
    <Pagination
      label="Pages of the trail"
      page={search.page}
      pages={Math.ceil(page.found / ENTRIES_A_PAGE)}
      addressOf={(to) => `${trailPageAddress(at, search, to)}${part ? `#${part}` : ''}`}
    />
  </>
)

import { forbidden } from 'next/navigation'
import { auditAddress } from '@/app/addresses'
import { AllOutcomes } from '@/app/audit/all-outcomes'
import { SearchForm } from '@/app/audit/search-form'
import { TrailTable } from '@/app/audit/trail-table'
import { VerifyAllButton } from '@/app/audit/verify-all-button'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { Entries } from '@/app/programmes/[code]/trail/entries'
import { Empty } from '@/app/ui/empty'
import { TakeTable } from '@/app/ui/take-table'
import { Section } from '@/app/ui/section'
import type { SignedIn } from '@/lib/auth/session'
import {
  auditSearchFrom,
  readableTrails,
  readAudit,
  readTrails,
  TRAILS_A_PAGE,
  type AuditSearch,
} from '@/lib/queries/audit'
import type { TrailOutcome } from '@/lib/trail/trail-outcome'
import { verifyAll } from '@/lib/trail/verify-all'

export const metadata = { title: 'Audit – Liquidus' }

interface AuditPageProps {
  searchParams: Promise<Record<string, string | string[] | undefined>>
}

/** All trails a person may read as one: searched, verified, exported. */
export default async function AuditPage({ searchParams }: AuditPageProps) {
  const person = await requirePerson(auditAddress())
  if (person.administrator) forbidden()
  const given = await searchParams
  return (
    <DeskSheet
      person={person}
      at={auditAddress()}
      title="Audit"
      supplement={
        person.auditor ? 'Every programme, and the installation itself' : 'The programmes you belong to'
      }
    >
      <Trails person={person} search={auditSearchFrom(given)} verifies={given['verify'] !== undefined} />
    </DeskSheet>
  )
}

interface TrailsProps {
  person: SignedIn
  search: AuditSearch
  verifies: boolean
}

async function Trails({ person, search, verifies }: TrailsProps) {
  const [{ trails, found }, { entries, hasMore }, outcomes] = await Promise.all([
    readTrails(person, search.code),
    readAudit(person, search),
    verifies ? outcomesOf(person, search.code) : undefined,
  ])
  const asked = search.code ? `?${new URLSearchParams({ programme: search.code })}` : ''
  return (
    <>
      <Section
        heading="What was done"
        lead="Newest first, over all trails"
        aside={<a href="#trails">Verify and export the trails</a>}
      >
        <SearchForm search={search} />
        {entries.length > 0 ? (
          <Entries entries={entries} several />
        ) : (
          <Empty title="Nothing found">Look for less, or for other words.</Empty>
        )}
        <MorePages search={search} hasMore={hasMore} />
      </Section>
      <Section
        id="trails"
        heading="Trails"
        lead={
          found > trails.length
            ? `The first ${TRAILS_A_PAGE} of ${found}; name a programme above for others.`
            : undefined
        }
        aside={<TakeTable address={`${auditAddress()}/csv${asked}`} what="All entries" />}
      >
        {outcomes && <AllOutcomes outcomes={outcomes} />}
        <VerifyAllButton verification={`${auditAddress()}/verification${asked}`} programme={search.code} />
        <TrailTable trails={trails} />
      </Section>
    </>
  )
}

async function outcomesOf(person: SignedIn, code: string): Promise<readonly TrailOutcome[]> {
  for await (const step of verifyAll(await readableTrails(person, code)))
    if ('outcomes' in step) return step.outcomes
  return []
}

/** How many there are in all is not counted: with very many entries that would cost more than the page. */
function MorePages({ search, hasMore }: { search: AuditSearch; hasMore: boolean }) {
  const { code, text, command, who, from, until, page } = search
  const addressOf = (to: number) =>
    `${auditAddress()}?${new URLSearchParams(
      Object.entries({ programme: code, text, what: command, who, from, until, page: String(to) }).filter(
        ([, value]) => value,
      ),
    )}`
  if (page === 1 && !hasMore) return null
  return (
    <nav className="pagination" aria-label="Pages of entries">
      <p>
        {page > 1 && (
          <a href={addressOf(page - 1)} rel="prev">
            Newer entries
          </a>
        )}
        {hasMore && (
          <a href={addressOf(page + 1)} rel="next">
            Older entries
          </a>
        )}
      </p>
    </nav>
  )
}

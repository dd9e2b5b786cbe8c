import { notFound } from 'next/navigation'
import { worksAddress, worksSubjectAddress, worksTrailAddress } from '@/app/addresses'
import { addressPart } from '@/app/address-part'
import { Entries } from '@/app/programmes/[code]/trail/entries'
import { trailPageAddress } from '@/app/programmes/[code]/trail/page-address'
import { SearchForm } from '@/app/programmes/[code]/trail/search-form'
import { Verdict } from '@/app/programmes/[code]/trail/verdict'
import { VerifyButton } from '@/app/programmes/[code]/trail/verify-button'
import { Digest } from '@/app/ui/digest'
import { Empty } from '@/app/ui/empty'
import { Pagination } from '@/app/ui/pagination'
import { Section } from '@/app/ui/section'
import { TakeTable } from '@/app/ui/take-table'
import { ENTRIES_A_PAGE, readTrail, trailSearchFrom } from '@/lib/queries/trail'
import { readWorksTrail } from '@/lib/queries/works/trail-subject'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { worksSubjectName } from '@/shared/works/works-kind'
import { visitWorks } from '../../../visit-works'
import { WorksSheet } from '../../../works-sheet'

interface WorksTrailPageProps {
  readonly params: Promise<{ kind: string; code: string }>
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>
}

export const generateMetadata = async ({ params }: WorksTrailPageProps) => ({
  title: `Decision trail, ${addressPart((await params).code)} – Liquidus`,
})

/** Who decided what about something of the works, when and why; and the proof that it still says so. */
export default async function WorksTrailPage({ params, searchParams }: WorksTrailPageProps) {
  const { kind, code } = await params
  const { person } = await visitWorks(worksAddress())
  const trail = await readWorksTrail(kind, addressPart(code))
  if (!trail) notFound()
  const given = await searchParams
  const search = trailSearchFrom(given)
  const page = await readTrail(trail.id, search)
  const verdict = given['verify'] ? await verdictOnStored(trail.id) : undefined
  const at = worksTrailAddress(trail)
  const name = worksSubjectName(trail)
  return (
    <WorksSheet
      person={person}
      at={worksAddress()}
      place={[{ text: name, href: worksSubjectAddress(trail) }, { text: 'Trail' }]}
      title={`Decision trail, ${name}`}
      supplement="Append-only; each entry carries the hash of the one before"
      cells={[
        { label: 'Entries', value: trail.head.seq },
        { label: 'Newest hash', value: <Digest value={trail.head.hash} length={24} />, wide: true },
      ]}
    >
      <Section
        heading="Proof"
        lead="Verifying shows an entry that was changed, left out, moved or cut off, and anything stored that is not what the entries say."
        aside={
          <div className="mark-row">
            <a href={`${at}/bundle`}>Export for the standalone verifier</a>
            <TakeTable address={`${at}/csv`} what="All entries" />
          </div>
        }
      >
        {verdict && <Verdict verdict={verdict} />}
        <VerifyButton verification={`${at}/verification`} withoutScripts={at} />
      </Section>
      <Section
        heading={search.entry > 0 ? `Entry ${search.entry}` : 'Entries'}
        lead={`${page.found} found, newest first`}
        aside={search.entry > 0 && <a href={at}>All entries</a>}
      >
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
          addressOf={(to) => trailPageAddress(at, search, to)}
        />
      </Section>
    </WorksSheet>
  )
}

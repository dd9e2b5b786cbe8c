import { notFound } from 'next/navigation'
import { worksAddress, worksSubjectAddress, worksTrailAddress } from '@/app/addresses'
import { addressPart } from '@/app/address-part'
import { Digest } from '@/app/ui/digest'
import { Section } from '@/app/ui/section'
import { readTrail, trailSearchFrom } from '@/lib/queries/trail'
import { readWorksTrail } from '@/lib/queries/works/trail-subject'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { worksSubjectName } from '@/shared/works/works-kind'
import { visitWorks } from '../../../visit-works'
import { WorksSheet } from '../../../works-sheet'
import { TakeTrail, TrailFound, TrailProof } from '@/app/programmes/[code]/trail/trail-parts'

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
        aside={<TakeTrail at={at} />}
      >
        <TrailProof at={at} verdict={verdict} />
      </Section>
      <Section
        heading={search.entry > 0 ? `Entry ${search.entry}` : 'Entries'}
        lead={`${page.found} found, newest first`}
        aside={search.entry > 0 && <a href={at}>All entries</a>}
      >
        <TrailFound at={at} search={search} page={page} />
      </Section>
    </WorksSheet>
  )
}

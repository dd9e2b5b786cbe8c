import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { partAddress, routeCardAddress } from '@/app/addresses'
import { requirePerson } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { openUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { readListingProgrammes, readPart } from '@/lib/queries/works/parts'
import { worksActor } from '@/lib/auth/works-actor'
import { PartsSheet } from '../parts-sheet'
import { Standing } from '../standing'
import { PartApproval } from './approval'
import { Drawings } from './drawings'
import { PartRevisions } from './revisions'
import { RevisePart } from './revise-part'
import { PartValuesShown } from './values-shown'

interface PartPageProps {
  params: Promise<{ part: string }>
  searchParams: Promise<{ upload?: string }>
}

export async function generateMetadata({ params }: PartPageProps) {
  return { title: `Part ${addressPart((await params).part)} – Liquidus` }
}

/** One part: its values, how they came about, who approved them, its drawings, and where it is used. */
export default async function PartPage({ params, searchParams }: PartPageProps) {
  const code = addressPart((await params).part)
  const person = await requirePerson(partAddress(code))
  const [part, listing] = await Promise.all([readPart(code), readListingProgrammes(code)])
  if (!part) notFound()
  const { upload } = await searchParams
  const answer = upload ? openUploadAnswer(upload, uploadSecret()) : {}
  const actor = worksActor(person)
  const mayReadProgrammes = !person.administrator
  return (
    <PartsSheet
      person={person}
      title={`Part ${part.code}`}
      supplement={part.values.description}
      place={[{ text: part.code }]}
      cells={[
        { label: 'Revision', value: part.revisions[0]?.number ?? 0 },
        { label: 'Stands', value: <Standing standing={part.standing} /> },
        { label: 'Content hash', value: <Digest value={part.digest} length={12} /> },
      ]}
    >
      {part.withdrawn && (
        <Notice kind="warning" title="Withdrawn">
          By {part.withdrawn.by}, <Day at={part.withdrawn.at} />: {part.withdrawn.why}
        </Notice>
      )}
      <Section heading="Values">
        <PartValuesShown values={part.values} />
        <RevisePart part={part} actor={actor} />
      </Section>
      <PartApproval part={part} actor={actor} hasPassword={person.hasPassword} />
      <Drawings part={part} actor={actor} answer={answer} />
      <Section heading="Used in" lead="The programmes whose parts list names it today.">
        {listing.length > 0 ? (
          <ul>
            {listing.map((programme) => (
              <li key={programme.code}>
                {mayReadProgrammes ? (
                  <a href={routeCardAddress(programme.code)}>{programme.code}</a>
                ) : (
                  programme.code
                )}
                , {programme.title}
              </li>
            ))}
          </ul>
        ) : (
          <Empty title="In no programme">A parts list names a part by its number.</Empty>
        )}
      </Section>
      <Section heading="Revisions" lead="The newest first, each with what it changed.">
        <PartRevisions revisions={part.revisions} />
      </Section>
    </PartsSheet>
  )
}

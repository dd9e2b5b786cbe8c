import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { trainedPersonAddress, worksPeopleAddress } from '@/app/addresses'
import { WorksSheet } from '@/app/works/works-sheet'
import { requirePerson } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { Facts } from '@/app/ui/facts'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { worksActor } from '@/lib/auth/works-actor'
import { inForce, readTraining, readValidMax, type RecordedTraining } from '@/lib/queries/people-of-the-works'
import { dateAtWorks } from '@/lib/settings/works'
import { refusal } from '@/shared/policy'
import { SKILLS, training } from '@/shared/records/kinds/training'
import { samePerson } from '@/shared/records/soldering-work'
import { heldOn } from '@/shared/training/competence'
import { skillName } from '@/shared/training/training-matrix'
import { CompetenceMark } from '../competence-mark'

export const metadata = { title: 'One person of the works – Liquidus' }

interface TrainedPersonPageProps {
  params: Promise<{ person: string }>
}

/** What one person may do, and everything they passed, withdrawn records among it. */
export default async function TrainedPersonPage({ params }: TrainedPersonPageProps) {
  const asked = addressPart((await params).person)
  const visitor = await requirePerson(trainedPersonAddress(asked))
  const [recorded, validMax] = await Promise.all([readTraining(), readValidMax()])
  const own = recorded.filter(({ worker }) => samePerson(worker) === samePerson(asked))
  const name = own.at(-1)?.worker
  if (name === undefined) notFound()
  const today = dateAtWorks(new Date())
  const standing = SKILLS.map(({ value, label }) => ({
    label,
    held: heldOn(
      inForce(own).filter(({ skill }) => skill === value),
      today,
      validMax.value,
    ),
  })).filter(({ held }) => held.competence !== 'never')
  return (
    <WorksSheet
      person={visitor}
      at={worksPeopleAddress()}
      title={name}
      supplement="What they may do at the works, and what they passed"
      place={[{ text: 'People of the works', href: worksPeopleAddress() }, { text: name }]}
      cells={[{ label: 'Skills', value: standing.length }]}
    >
      <Section heading="May do" lead="Each with its last day.">
        {standing.length > 0 ? (
          <Facts
            facts={standing.map(({ label, held }) => ({ label, value: <CompetenceMark held={held} /> }))}
          />
        ) : (
          <p>Nothing that counts is recorded.</p>
        )}
      </Section>
      <Section heading="Passed" lead="Newest first; a record that was withdrawn stays with its reason.">
        <History
          own={own.toReversed()}
          mayChange={!refusal('correct-record', worksActor(visitor), training)}
        />
      </Section>
    </WorksSheet>
  )
}

const History = ({ own, mayChange }: { own: readonly RecordedTraining[]; mayChange: boolean }) => (
  <RuledTable
    caption="Examinations passed"
    captionHidden
    rows={own}
    rowKey={({ id }) => id}
    columns={[
      { label: 'Skill', names: true, cell: ({ skill }) => skillName(skill) },
      { label: 'Passed on', set: 'shrink', cell: ({ passedOn }) => <Day at={passedOn} /> },
      { label: 'Valid to', set: 'shrink', cell: ({ expiresOn }) => <Day at={expiresOn} /> },
      { label: 'Certificate or record', cell: ({ certificate }) => certificate },
      {
        label: 'Recorded',
        cell: ({ recorded, recordedIn }) => (
          <>
            {recorded.by}, <Day at={recorded.at} />
            {recordedIn.kind === 'programme' && `, in ${recordedIn.code}`}
          </>
        ),
      },
      {
        label: 'Stands',
        cell: ({ withdrawn, corrections, worker, id }) =>
          withdrawn ? (
            <>
              withdrawn <Day at={withdrawn.at} />: {withdrawn.why}
            </>
          ) : (
            <>
              <a href={trainedPersonAddress(worker, id)}>
                {mayChange ? 'Certificates, correct or withdraw' : 'Open'}
              </a>
              {corrections.length > 0 && ' (corrected)'}
            </>
          ),
      },
    ]}
  />
)

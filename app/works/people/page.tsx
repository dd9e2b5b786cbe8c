import {
  trainedPersonAddress,
  trainingTableAddress,
  worksPeopleAddress,
  worksTrailAddress,
} from '@/app/addresses'
import { WorksSheet } from '@/app/works/works-sheet'
import { requirePerson } from '@/app/frame/visit'
import { AddRecords } from '@/app/records/add-records'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { SignedIn } from '@/lib/auth/session'
import { worksActor } from '@/lib/auth/works-actor'
import { inForce, readTraining, readValidMax } from '@/lib/queries/people-of-the-works'
import { dateAtWorks } from '@/lib/settings/works'
import { NOT_OF_THE_WORKS, refusal } from '@/shared/policy'
import { SKILLS, training, type Skill } from '@/shared/records/kinds/training'
import { NOTICE_DAYS, type Competence } from '@/shared/training/competence'
import { runningOut, skillName, trainingMatrix, type TrainedPerson } from '@/shared/training/training-matrix'
import { CompetenceMark } from './competence-mark'
import { PEOPLE_OF_THE_WORKS } from './people-of-the-works'

export const metadata = { title: 'People of the works – Liquidus' }

/** Who may do what at the works, until when; what runs out; and the form to add training. */
export default async function WorksPeoplePage() {
  const person = await requirePerson(worksPeopleAddress())
  const [recorded, validMax] = await Promise.all([readTraining(), readValidMax()])
  const people = trainingMatrix(inForce(recorded), dateAtWorks(new Date()), validMax.value)
  const soon = runningOut(people)
  const refused = refusedThere(person)
  return (
    <WorksSheet
      person={person}
      at={worksPeopleAddress()}
      title="People of the works"
      supplement="Who may do what, and until when; every programme reads it for the days of its runs"
      cells={[
        { label: 'People', value: people.length },
        { label: `Run out in ${NOTICE_DAYS} days`, value: soon.length },
        { label: 'Lapsed', value: count(people, 'lapsed') },
      ]}
    >
      <Section
        heading="Who may do what"
        lead={`Each with its last day. An examination is good to the day it states, and for ${validMax.value} months at the most (${validMax.document}). A programme may ask for less.`}
      >
        {people.length > 0 ? (
          <RuledTable
            caption="People by skill"
            captionHidden
            take={trainingTableAddress()}
            rows={people}
            rowKey={({ name }) => name}
            columns={MATRIX}
          />
        ) : (
          <Empty title="No training is recorded yet">Add the first below.</Empty>
        )}
      </Section>
      <Section heading={`Runs out within ${NOTICE_DAYS} days`}>
        {soon.length > 0 ? <RunningOut soon={soon} /> : <p>Nothing does.</p>}
      </Section>
      {refused ? (
        <p className="field-hint">{refused}</p>
      ) : (
        <AddRecords kind={training} of={PEOPLE_OF_THE_WORKS} previewed />
      )}
      <TrailLink />
    </WorksSheet>
  )
}

/** Why the person adds no training here; undefined when they may. */
function refusedThere(person: SignedIn): string | undefined {
  const actor = worksActor(person)
  const ofNoDepartment = actor.departments.length === 0 && !actor.auditor && !actor.administrator
  return ofNoDepartment ? NOT_OF_THE_WORKS : refusal('add-record', actor, training)
}

const count = (people: readonly TrainedPerson[], wanted: Competence): number =>
  people.flatMap(({ held }) => [...held.values()].filter(({ competence }) => competence === wanted)).length

const MATRIX: Column<TrainedPerson>[] = [
  { label: 'Person', names: true, cell: ({ name }) => <a href={trainedPersonAddress(name)}>{name}</a> },
  ...SKILLS.map(({ value, label }): Column<TrainedPerson> => ({
    label,
    cell: ({ held }) => <CompetenceMark held={held.get(value) ?? { competence: 'never', until: null }} />,
  })),
]

function RunningOut({ soon }: { soon: readonly { name: string; skill: Skill; until: string }[] }) {
  return (
    <RuledTable
      caption="What runs out, the soonest first"
      captionHidden
      rows={soon}
      rowKey={({ name, skill }) => `${name} ${skill}`}
      columns={[
        { label: 'Person', names: true, cell: ({ name }) => <a href={trainedPersonAddress(name)}>{name}</a> },
        { label: 'Skill', cell: ({ skill }) => skillName(skill) },
        { label: 'Last day', set: 'shrink', cell: ({ until }) => <Day at={until} /> },
      ]}
    />
  )
}

const TrailLink = () => (
  <p className="print-hidden">
    <a href={worksTrailAddress({ kind: 'people', code: 'people' })}>What was recorded, by whom and when</a>
  </p>
)

import { companyRulesAddress, lessonAddress, lessonsAddress, worksTrailAddress } from '@/app/addresses'
import { WorksSheet } from '@/app/works/works-sheet'
import { requirePerson } from '@/app/frame/visit'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { worksActor } from '@/lib/auth/works-actor'
import { readCompanyRules, readDifferingProgrammes } from '@/lib/queries/company-rules'
import { lessonsFor } from '@/lib/queries/lessons'
import { textFromAddress } from '@/lib/queries/from-address'
import { undecided } from '@/shared/company-rules/rule-difference'
import { lessonName, lessonStatus, type Lesson } from '@/shared/lessons/lesson'
import { changeInWords } from '@/shared/lessons/lesson-change'
import { refusal } from '@/shared/policy'
import { Differing } from './differing'
import { PastRules } from './past-rules'
import { Preferences } from './preferences'
import { RulesInForce } from './rules-in-force'
import { StateRuleForm } from './state-rule-form'

export const metadata = { title: 'Company rules – Liquidus' }

interface CompanyRulesPageProps {
  searchParams: Promise<{ prefer?: string }>
}

/** What the company asks of every programme, the values it prefers, and which programmes differ. */
export default async function CompanyRulesPage({ searchParams }: CompanyRulesPageProps) {
  const person = await requirePerson(companyRulesAddress())
  const prefer = textFromAddress((await searchParams).prefer)
  const actor = worksActor(person)
  const asked = await readCompanyRules()
  const { rules, preferences } = asked
  const [differing, lessons] = await Promise.all([
    readDifferingProgrammes(person, asked),
    // A lesson is read in its programme, and an administrator reads none.
    person.administrator ? [] : lessonsFor(person),
  ])
  const inForce = rules.filter(({ withdrawn }) => withdrawn === null)
  const open = differing.filter(
    ({ differences, values }) =>
      undecided(differences).length > 0 || values.some(({ kept }) => kept === null),
  )
  const refused = refusal('state-company-rule', actor)
  return (
    <WorksSheet
      person={person}
      at={companyRulesAddress()}
      title="Company rules"
      supplement="Kept once: every programme starts with them, and is shown when they change"
      cells={[
        { label: 'In force', value: inForce.length },
        { label: 'Preferred values', value: preferences.filter((one) => one.withdrawn === null).length },
        { label: 'Programmes to decide', value: open.length },
      ]}
    >
      <Section
        heading="Limits in force"
        lead="Each is laid on its limit as a company layer when a programme is opened; the strictest layer rules, unless one relaxes."
      >
        <RulesInForce rules={inForce} mayState={!refused} />
      </Section>
      <Section heading="State a rule">
        {refused ? <p className="field-hint">{refused}</p> : <StateRuleForm />}
      </Section>
      <Preferences preferences={preferences} prefer={prefer} refused={refusal('prefer-value', actor)} />
      <Section heading="Programmes that differ">
        <Differing programmes={differing} />
      </Section>
      {!person.administrator && (
        <AcceptedLessons lessons={lessons.filter((one) => lessonStatus(one) === 'accepted')} />
      )}
      <PastRules rules={rules} preferences={preferences} />
      <p className="print-hidden">
        <a href={worksTrailAddress({ kind: 'company-rules', code: 'company-rules' })}>
          What was stated, by whom and when
        </a>
      </p>
    </WorksSheet>
  )
}

/** Lessons come into programmes beside the rules, and are decided in the programme that learnt them. */
function AcceptedLessons({ lessons }: { lessons: readonly Lesson[] }) {
  return (
    <Section
      heading="Accepted lessons"
      lead="They come into every new programme beside the rules."
      aside={<a href={lessonsAddress()}>All lessons</a>}
    >
      {lessons.length > 0 ? (
        <RuledTable
          caption="Accepted lessons"
          captionHidden
          rows={lessons}
          rowKey={lessonName}
          columns={[
            {
              label: 'Lesson',
              names: true,
              cell: (lesson) => <a href={lessonAddress(lesson.programme, lesson.number)}>{lesson.title}</a>,
            },
            { label: 'Change', cell: ({ change }) => changeInWords(change) },
            { label: 'From', set: 'shrink', cell: ({ programme, number }) => `${programme}, no. ${number}` },
          ]}
        />
      ) : (
        <p>None yet.</p>
      )}
    </Section>
  )
}

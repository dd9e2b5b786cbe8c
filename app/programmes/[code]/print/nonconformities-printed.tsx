import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { STEP_NAMES, type Nonconformity } from '@/shared/nonconformities/nonconformity'
import { standingOf } from '@/shared/nonconformities/standing'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { placeInWords } from '../nonconformities/place-in-words'

/** Everything that was found not to be as required, and what was done about it. */
export function NonconformitiesPrinted({ nonconformities }: { nonconformities: readonly Nonconformity[] }) {
  return (
    <Section heading="Nonconformities">
      {nonconformities.length === 0 && <p>None recorded.</p>}
      {nonconformities.map((one) => (
        <NonconformityPrinted key={one.number} nonconformity={one} />
      ))}
    </Section>
  )
}

function NonconformityPrinted({ nonconformity }: { nonconformity: Nonconformity }) {
  const { number, title, found, foundOn, owner, place, openedBy, steps } = nonconformity
  const where = placeInWords(place)
  return (
    <Section level={3} heading={`Nonconformity ${number}: ${title}, ${standingOf(steps)}`}>
      <p>
        Found on <Day at={foundOn} />
        {where && <>, {where}</>}: {found} Opened by {openedBy}; {DEPARTMENT_NAMES[owner]} sees to it.
      </p>
      {steps.length > 0 && (
        <RuledTable
          caption={`What was done about nonconformity ${number}`}
          captionHidden
          rows={steps}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Step', names: true, set: 'shrink', cell: ({ kind }) => STEP_NAMES[kind] },
            {
              label: 'What was done',
              cell: ({ text, helped, withdrawn }) => (
                <>
                  {withdrawn ? <del>{text}</del> : text}
                  {helped !== null && (helped ? ' It helped.' : ' It did not help.')}
                  {withdrawn && ` Withdrawn by ${withdrawn.by}: ${withdrawn.why}`}
                </>
              ),
            },
            { label: 'On', set: 'shrink', cell: ({ doneOn }) => <Day at={doneOn} /> },
            { label: 'Recorded by', set: 'shrink', cell: ({ addedBy }) => addedBy },
          ]}
        />
      )}
    </Section>
  )
}

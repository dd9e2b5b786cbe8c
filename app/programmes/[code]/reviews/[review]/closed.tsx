import { randomUUID } from 'node:crypto'
import { itemAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { agendaSigned } from '@/shared/reviews/minutes-content'
import type { Review } from '@/shared/reviews/review'
import { nameMinutes } from '../actions'
import { SubjectLink } from './subject-link'

/** The chair's signature, and the items whose evidence the minutes are. */
export function Closed({ view, review }: { view: ProgrammeView; review: Review }) {
  const { closed, number } = review
  if (!closed) return null
  const named = view.state.evidence.filter(({ sha256 }) => sha256 === closed.digest)
  const items = view.state.items.filter(
    ({ definition: { key } }) => !named.some(({ itemKey }) => itemKey === key),
  )
  return (
    <Section heading="Signed">
      <p>
        {closed.by}, <Day at={closed.at} />: signs the minutes as they stand. <Digest value={closed.digest} />
      </p>
      <OpenThen view={view} review={review} cover={closed.cover} />
      {named.length > 0 && (
        <p>
          Evidence of{' '}
          {named.map(({ itemKey }, position) => (
            <span key={itemKey}>
              {position > 0 && ', '}
              <a href={`${itemAddress(view.code, itemKey)}#evidence`}>{titleOf(view, itemKey)}</a>
            </span>
          ))}
          .
        </p>
      )}
      {!refusal('name-minutes', view.actor) && items.length > 0 && (
        <CommandForm
          action={nameMinutes}
          formKey={randomUUID()}
          hidden={{ programme: view.code, review: number }}
          label="Name the minutes as evidence"
          className="print-hidden"
        >
          <AnsweredDisclosure summary="Name the minutes as evidence of an item">
            <div className="form-narrow">
              <ChoiceBox
                name="item"
                label="Item"
                choices={items.map(({ definition: { key, title } }) => ({ value: key, text: title }))}
              />
              <TextBox name="note" label="What they show" optional />
              <SubmitButton kind="quiet">Name them as evidence</SubmitButton>
            </div>
          </AnsweredDisclosure>
        </CommandForm>
      )}
    </Section>
  )
}

/** What was open when the chair signed, as the signature covers it. */
function OpenThen({ view, review, cover }: { view: ProgrammeView; review: Review; cover: string }) {
  const agenda = agendaSigned(cover)
  if (agenda.length === 0) return null
  return (
    <Disclosure summary={`What was open when they were signed: ${agenda.length}`}>
      <ul>
        {agenda.map(({ about, open, count }) => (
          <li key={`${about.kind} ${about.key}`}>
            <SubjectLink view={view} review={review} subject={about} />: {open}
            {count > 1 && `, ${count} findings`}
          </li>
        ))}
      </ul>
    </Disclosure>
  )
}

const titleOf = (view: ProgrammeView, key: string): string =>
  view.state.items.find(({ definition }) => definition.key === key)?.definition.title ?? key

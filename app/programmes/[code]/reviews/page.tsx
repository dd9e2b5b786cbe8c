import { randomUUID } from 'node:crypto'
import { reviewAddress, reviewsAddress, tableAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { RuledTable } from '@/app/ui/ruled-table'
import { SubmitButton } from '@/app/ui/submit-button'
import { TakeTable } from '@/app/ui/take-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { readReviews } from '@/lib/queries/reviews'
import { refusal } from '@/shared/policy'
import { openReview } from './actions'
import { AttendanceBoxes } from './attendance-boxes'

export const generateMetadata = programmeTitle(({ code }) => `Design reviews, ${code}`)

/** The design reviews of a programme, and the form to open one. */
export default programmePage(async ({ visit, code }) => {
  const { state } = visit.view
  const reviews = await readReviews(state.programme.id)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={reviewsAddress(code)}
      place={[{ text: 'Reviews' }]}
      title="Design reviews"
      supplement="Meetings held off one page: what is open, who was there, what was decided, and what became of it"
      cells={[
        { label: 'Minutes open', value: reviews.filter(({ closedAt }) => !closedAt).length },
        { label: 'Minutes signed', value: reviews.filter(({ closedAt }) => closedAt).length },
      ]}
    >
      {(view) => (
        <>
          <OpenReview view={view} open={reviews.length === 0} />
          {reviews.length === 0 ? (
            <Empty title="No review was held yet">
              Its agenda is made from what is open: failing findings, open actions, proposals.
              <FirstStep
                first="First say when it is held and who is there."
                refused={refusal('open-review', view.actor)}
              />
            </Empty>
          ) : (
            <RuledTable
              caption="Reviews"
              take={tableAddress(view.code, 'reviews')}
              captionHidden
              rows={reviews}
              rowKey={({ number }) => number}
              columns={[
                { label: 'No.', set: 'shrink', cell: ({ number }) => number },
                {
                  label: 'Review',
                  names: true,
                  cell: ({ number, title }) => <a href={reviewAddress(code, number)}>{title}</a>,
                },
                { label: 'Held', set: 'shrink', cell: ({ heldOn }) => <Day at={heldOn} /> },
                { label: 'Chair', cell: ({ chair }) => chair },
                { label: 'Lines', set: 'number', cell: ({ lines }) => lines },
                {
                  label: 'Minutes',
                  cell: ({ closedAt }) =>
                    closedAt ? (
                      <>
                        signed <Day at={closedAt} />
                      </>
                    ) : (
                      'open'
                    ),
                },
              ]}
            />
          )}
          <TakeTable address={tableAddress(view.code, 'comments')} what="All comments of the programme" />
        </>
      )}
    </ProgrammeSheet>
  )
})

function OpenReview({ view, open }: { view: ProgrammeView; open: boolean }) {
  if (refusal('open-review', view.actor)) return null
  return (
    <CommandForm
      action={openReview}
      formKey={randomUUID()}
      hidden={{ programme: view.code }}
      label="Open a design review"
    >
      <AnsweredDisclosure summary="Open a design review" open={open}>
        <div className="form-narrow">
          <TextBox name="title" label="Title" placeholder="Review of the specification" required />
          <TextBox name="heldOn" type="date" label="Held on" defaultValue={view.state.facts.today} required />
          <AttendanceBoxes
            members={view.state.members}
            chair={view.actor.personId}
            present={[view.actor.personId]}
            guests={[]}
          />
          <SubmitButton>Open the review</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}

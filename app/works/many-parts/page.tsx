import { randomUUID } from 'node:crypto'
import { manyPartsAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { TableEditor } from '@/app/forms/table-editor'
import { requirePerson } from '@/app/frame/visit'
import { MayNot } from '@/app/works/parts/may-not'
import { PartsSheet } from '@/app/works/parts/parts-sheet'
import { SubmitButton } from '@/app/ui/submit-button'
import { worksActor } from '@/lib/auth/works-actor'
import { refusal } from '@/shared/policy'
import { describeMany } from './actions'
import { MANY_COLUMNS, MOST_AT_ONCE } from './many-columns'

export const metadata = { title: 'Describe many parts – Liquidus' }

/** Many parts at once, from a spreadsheet or a file, looked at before any of them is described. */
export default async function ManyPartsPage() {
  const person = await requirePerson(manyPartsAddress())
  const refused = refusal('describe-part', worksActor(person))
  return (
    <PartsSheet
      person={person}
      title="Describe many parts"
      supplement="Load the rows below, say which column is which where headings differ, and look at them before they are sent"
      place={[{ text: 'Describe many parts' }]}
    >
      {refused ? (
        <MayNot>{refused}</MayNot>
      ) : (
        <CommandForm
          action={describeMany}
          formKey={randomUUID()}
          label="Describe many parts"
          className="form-stack"
        >
          <TableEditor
            name="parts"
            caption="Parts to describe"
            columns={MANY_COLUMNS}
            rows={[]}
            maxRows={MOST_AT_ONCE}
          />
          <LinesBox
            name="reason"
            label="Why"
            hint="Where the table comes from; it stands in the trail of each part."
            rows={2}
            required
          />
          <SubmitButton>Describe these parts</SubmitButton>
        </CommandForm>
      )}
    </PartsSheet>
  )
}

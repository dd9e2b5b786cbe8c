import { forbidden } from 'next/navigation'
import { randomUUID } from 'node:crypto'
import { newItemAddress, routeCardAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, PickBox, TextBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { refusal } from '@/shared/policy'
import { addItem, takeUpItem } from '@/app/forms/command-actions'
import { ApproversBoxes } from './approvers-boxes'

export const generateMetadata = programmeTitle(({ code }) => `Add an item to the plan, ${code}`)

/** Tailoring the plan: something this board needs settled that the standard plan does not ask. */
export default programmePage(async ({ visit, code }) => {
  if (refusal('add-item', visit.view.actor)) forbidden()
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={routeCardAddress(code)}
      place={[{ text: 'Add an item', href: newItemAddress(code) }]}
      title="Add an item to the plan"
      supplement="It is settled by evidence and approvals, and its stage’s gate waits for it"
    >
      {({ code: programme, state }) => (
        <>
          <LeftOut code={programme} planned={state.items.map(({ definition }) => definition.key)} />
          <ItemForm code={programme} />
        </>
      )}
    </ProgrammeSheet>
  )
})

/** Items of the standard plan that the programme was opened without: a later version brought them. */
function LeftOut({ code, planned }: { code: string; planned: readonly string[] }) {
  const leftOut = STANDARD_PLAN.filter(({ key }) => !planned.includes(key))
  if (leftOut.length === 0) return null
  return (
    <Section
      id="standard"
      heading="Take an item of the standard plan up"
      lead="The plan asks for these today; this programme was opened before it did. Its stage’s gate waits for an item that is taken up."
    >
      <CommandForm
        action={takeUpItem}
        formKey={randomUUID()}
        hidden={{ programme: code }}
        label="Take an item of the standard plan up"
        className="form-narrow"
      >
        <PickBox
          name="item"
          label="Item"
          choices={leftOut.map(({ key, title, stage }) => ({
            value: key,
            text: `${title} (${STAGE_NAMES[stage]})`,
          }))}
          required
        />
        <LinesBox name="reason" label="Why" rows={2} required />
        <SubmitButton>Take it up</SubmitButton>
      </CommandForm>
    </Section>
  )
}

function ItemForm({ code }: { code: string }) {
  return (
    <CommandForm
      action={addItem}
      formKey={randomUUID()}
      hidden={{ programme: code }}
      label="Add an item to the plan"
      className="form-narrow"
    >
      <TextBox name="item.title" label="Title" maxLength={120} required />
      <LinesBox
        name="item.asks"
        label="What it settles"
        hint="The question that has to be answered before the gate."
        maxLength={500}
        required
      />
      <PickBox
        name="item.stage"
        label="Stage"
        choices={STAGES.map((value) => ({ value, text: STAGE_NAMES[value] }))}
        required
      />
      <PickBox
        name="item.owner"
        label="Owner"
        choices={DEPARTMENTS.map((value) => ({ value, text: DEPARTMENT_NAMES[value] }))}
        required
      />
      <ApproversBoxes />
      <TextBox
        name="item.evidence"
        label="Evidence it wants"
        hint="Such as “report of the vibration test”; the item waits until something of it is attached."
        maxLength={120}
        optional
      />
      <SubmitButton>Add the item</SubmitButton>
    </CommandForm>
  )
}

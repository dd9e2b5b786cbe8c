import { forbidden } from 'next/navigation'
import { randomUUID } from 'node:crypto'
import { newProgrammeAddress, programmesAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, NumberBox, PickBox, TextBox } from '@/app/forms/fields'
import { DeskSheet } from '@/app/frame/desk-sheet'
import { requirePerson } from '@/app/frame/visit'
import { SubmitButton } from '@/app/ui/submit-button'
import { readProgramme, type ProgrammeView } from '@/lib/queries/programme-reader'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import type { Parameter } from '@/shared/plan/parameter'
import {
  alloyFamily,
  annualVolume,
  environment,
  productClass,
  serviceYears,
} from '@/shared/plan/parameters/programme'
import { refusal } from '@/shared/policy'
import { openProgramme } from '@/app/forms/command-actions'

export const metadata = { title: 'Open a programme – Liquidus' }

/** Opening a programme: what is said here heads its whole specification. */
export default async function NewProgrammePage({
  searchParams,
}: {
  searchParams: Promise<{ from?: string }>
}) {
  const person = await requirePerson(newProgrammeAddress())
  const { from = '' } = await searchParams
  if (refusal('open-programme', { ...person, departments: [], leads: false })) forbidden()
  const read = from ? await readProgramme(from, person) : undefined
  const taken = read?.found && read.view ? takenFrom(read.view) : NOTHING_TAKEN
  return (
    <DeskSheet
      person={person}
      at={programmesAddress()}
      title="Open a programme"
      supplement="One board, from specification to service. You will lead it, and can hand the lead over later."
      place={[{ text: 'Programmes', href: programmesAddress() }, { text: 'Open a programme' }]}
    >
      <CommandForm
        action={openProgramme}
        formKey={randomUUID()}
        label="The programme"
        className="form-narrow"
      >
        <TextBox
          name="code"
          label="Code"
          hint="2 to 24 letters, digits or hyphens, such as LX-41. It cannot be changed later."
          maxLength={24}
          required
        />
        <TextBox
          name="title"
          label="Title"
          hint="What the board is, in a few words."
          maxLength={120}
          defaultValue={taken.title}
          required
        />
        <TextBox
          name="from"
          label="Start from another programme"
          hint="Its code. Values, stated limits and plan are taken over, each said to be; what it set aside is proposed again. Evidence, records and approvals are not."
          maxLength={24}
          defaultValue={from}
          optional
        />
        <PickBox
          name="department"
          label="Your department in this programme"
          choices={DEPARTMENTS.map((value) => ({ value, text: DEPARTMENT_NAMES[value] }))}
          defaultValue={taken.department}
          required
        />
        <ChoiceBox
          name="productClass"
          label={productClass.label}
          hint={productClass.help}
          choices={choicesOf(productClass)}
          defaultValue={taken.text(productClass)}
        />
        <ChoiceBox
          name="alloyFamily"
          label={alloyFamily.label}
          hint={alloyFamily.help}
          choices={choicesOf(alloyFamily)}
          defaultValue={taken.text(alloyFamily)}
        />
        <NumberBox
          name="serviceYears"
          label={serviceYears.label}
          hint={serviceYears.help}
          unit="years"
          defaultValue={taken.text(serviceYears)}
          required
        />
        <ChoiceBox
          name="environment"
          label={environment.label}
          hint={environment.help}
          choices={choicesOf(environment)}
          defaultValue={taken.text(environment)}
        />
        <NumberBox
          name="annualVolume"
          label={annualVolume.label}
          hint={annualVolume.help}
          unit="boards"
          defaultValue={taken.text(annualVolume)}
          required
        />
        <SubmitButton>Open the programme</SubmitButton>
      </CommandForm>
    </DeskSheet>
  )
}

/** What the form is filled with from the programme it starts from; all of it can be typed over. */
const takenFrom = ({ state, actor }: ProgrammeView) => ({
  title: state.programme.title,
  department: actor.departments[0],
  text: ({ key }: { readonly key: string }): string => String(state.facts.values.get(key) ?? ''),
})
const NOTHING_TAKEN = { title: '', department: undefined, text: () => '' } as const

/** The options of a choice, with an empty one first so that nothing is chosen by accident. */
function choicesOf({ shape }: Parameter<string>) {
  const options = shape.kind === 'field' && shape.column.kind === 'choice' ? shape.column.options : []
  return [{ value: '', text: 'Choose …' }, ...options.map(({ value, label }) => ({ value, text: label }))]
}

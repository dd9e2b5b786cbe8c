import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { addInstrument, calibrateInstrument, takeInstrumentOutOfUse } from '@/app/forms/command-actions'

const CalibrationBoxes = () => (
  <>
    <TextBox name="calibratedOn" type="date" label="Calibrated on" required />
    <TextBox name="dueOn" type="date" label="Due on" required />
    <TextBox name="certificate" label="Certificate" required />
  </>
)

export function AddInstrumentForm() {
  return (
    <Section heading="Add an instrument">
      <CommandForm
        action={addInstrument}
        formKey={randomUUID()}
        label="Add an instrument"
        className="form-narrow"
      >
        <TextBox name="tag" label="Tag" hint="The number on its label." required />
        <TextBox name="measures" label="What it measures" required />
        <CalibrationBoxes />
        <SubmitButton>Add the instrument</SubmitButton>
      </CommandForm>
    </Section>
  )
}

export function InstrumentForms({
  instrument,
}: {
  instrument: { id: string; tag: string; outOfUse: boolean }
}) {
  return (
    <>
      <CommandForm
        action={calibrateInstrument}
        formKey={randomUUID()}
        hidden={{ instrument: instrument.id }}
        label={`Calibration of ${instrument.tag}`}
      >
        <AnsweredDisclosure summary="Record a calibration">
          <div className="form-narrow">
            <CalibrationBoxes />
            <SubmitButton>Record the calibration</SubmitButton>
          </div>
        </AnsweredDisclosure>
      </CommandForm>
      {!instrument.outOfUse && (
        <CommandForm
          action={takeInstrumentOutOfUse}
          formKey={randomUUID()}
          hidden={{ instrument: instrument.id }}
          label={`Take ${instrument.tag} out of use`}
        >
          <AnsweredDisclosure summary="Take out of use">
            <div className="form-narrow">
              <TextBox name="reason" label="Why" required />
              <SubmitButton kind="danger">Take out of use</SubmitButton>
            </div>
          </AnsweredDisclosure>
        </CommandForm>
      )}
    </>
  )
}

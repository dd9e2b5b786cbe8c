import { dispositionInWords } from '@/shared/records/lot-identity'
import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, PickBox } from '@/app/forms/fields'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { Section } from '@/app/ui/section'
import { refusal } from '@/shared/policy'
import { DISPOSITIONS, type Lot } from '@/shared/records/lot'
import { disposeLot } from '@/app/forms/command-actions'
import type { LotAt } from './lot-at'

/** What quality decided about the lot, and the form to decide. */
export function Disposition({ at, lot }: { at: LotAt; lot: Lot }) {
  const refused = refusal('dispose-lot', at.actor)
  return (
    <Section id="disposition" heading="Disposition">
      {lot.disposition && (
        <p>
          {dispositionInWords(lot)}, {lot.disposition.by}, {lot.disposition.on}: {lot.disposition.reason}
        </p>
      )}
      {refused ? (
        <p className="field-hint">{refused}</p>
      ) : (
        <CommandForm
          action={disposeLot}
          formKey={randomUUID()}
          hidden={{ ...at.names, lot: lot.code }}
          label="Disposition of the lot"
          className="form-narrow"
        >
          <PickBox
            name="verdict"
            label="Disposition"
            choices={DISPOSITIONS.map((value) => ({ value, text: value }))}
            required
          />
          <LinesBox name="reason" label="Why" rows={2} required />
          <PreviewedSubmit>Record disposition</PreviewedSubmit>
        </CommandForm>
      )}
    </Section>
  )
}

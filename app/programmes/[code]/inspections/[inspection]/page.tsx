import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import { inspectionsAddress, reworkAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { Notice } from '@/app/ui/notice'
import { ValueTable } from '@/app/ui/parameter-value'
import { SubmitButton } from '@/app/ui/submit-button'
import { correctionsOf } from '@/lib/queries/corrections'
import { refusal } from '@/shared/policy'
import { withdrawInspection } from '@/app/forms/command-actions'
import { DEFECT_COLUMNS } from '../defect-columns'
import { CorrectInspection } from './correct-inspection'

export const generateMetadata = programmeTitle(({ code }) => `Inspection, ${code}`)

/** One assembly looked at. */
export default programmePage<{ inspection: string }>(async ({ visit, code, params: { inspection: id } }) => {
  const inspection = visit.view.state.facts.records.inspections.find((entry) => entry.id === id)
  if (!inspection) notFound()
  const corrections = (await correctionsOf([id])).get(id) ?? []
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={inspectionsAddress(code)}
      place={[{ text: 'Inspections', href: inspectionsAddress(code) }, { text: inspection.assembly }]}
      title={`Assembly ${inspection.assembly}`}
      supplement={inspection.note}
      cells={[
        { label: 'Inspected', value: <Day at={inspection.inspectedOn} /> },
        { label: 'By', value: inspection.inspector },
        { label: 'Magnification', value: `${inspection.magnification} ×` },
        { label: 'Joints inspected', value: inspection.jointsSeen },
      ]}
    >
      {(view) => (
        <>
          {inspection.defects.length > 0 ? (
            <>
              <ValueTable caption="Defects" columns={DEFECT_COLUMNS} rows={inspection.defects} />
              <p>
                <a href={reworkAddress(view.code)}>The rework desk</a> has each of them, until it is mended
                and inspected again.
              </p>
            </>
          ) : (
            <Notice kind="success" title="No defect was found" />
          )}
          <CorrectInspection view={view} inspection={inspection} corrections={corrections} />
          {!refusal('withdraw-inspection', view.actor) && (
            <Disclosure summary="Withdraw this inspection" printed={false}>
              <CommandForm
                action={withdrawInspection}
                formKey={randomUUID()}
                hidden={{ programme: view.code, inspection: id }}
                label="Withdraw this inspection"
                className="form-narrow"
              >
                <TextBox name="reason" label="Why it should not count" required />
                <SubmitButton kind="danger">Withdraw the inspection</SubmitButton>
              </CommandForm>
            </Disclosure>
          )}
        </>
      )}
    </ProgrammeSheet>
  )
})

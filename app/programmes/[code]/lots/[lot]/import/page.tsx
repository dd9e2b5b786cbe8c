import { forbidden, notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { lotAddress, lotsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { importerFor } from '@/app/imports/importer'
import { LOT_IMPORT } from '../lot-import'
import { ImportSheet } from '@/app/imports/import-sheet'
import { formFrom } from '@/app/imports/chosen-form'
import { mappingFrom } from '@/app/imports/chosen-mapping'
import { ButtonLink } from '@/app/ui/button'
import { Section } from '@/app/ui/section'
import { readImport } from '@/lib/queries/read-import'
import { lotTarget, targetFields } from '@/lib/readings/import-target'
import { refusal } from '@/shared/policy'
import { testLot } from '../actions'
import { PreviewButton, WhatItWouldTurn } from '@/app/forms/previewed-submit'
import { TestFacts } from '@/app/lots/test-facts'
import { lotInProgramme } from '../lot-in-programme'

export const generateMetadata = programmeTitle<{ lot: string }>(
  ({ code, lot }) => `Test of lot ${lot}, ${code}`,
)

/** A file of test readings: which column is which, and the facts of the test to confirm with. */
export default programmePage<{ lot: string }>(
  async ({ visit, code, params: { lot: key }, searchParams: given }) => {
    const lot = visit.view.state.facts.records.lots.find((entry) => entry.code === addressPart(key))
    const at = lot && lotInProgramme(visit.view, lot)
    if (!at) notFound()
    const [file, method] = [given['file'] ?? '', given['method'] ?? '']
    if (refusal('test-lot', visit.view.actor)) forbidden()
    const target = lotTarget(lot.code, method)
    if (target?.kind !== 'lot') notFound()
    const fields = targetFields(target)
    const found = await readImport(file, importerFor(LOT_IMPORT, visit.person, visit.view).reader, fields, {
      mapping: mappingFrom(given, fields),
      form: formFrom(given),
    })
    if (!found) notFound()
    const address = lotAddress(code, lot.code)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={lotsAddress(code)}
        place={[
          { text: 'Lots', href: lotsAddress(code) },
          { text: lot.code, href: address },
          { text: 'Import' },
        ]}
        title={`Test of lot ${lot.code}`}
        supplement="All readings of the file, or none"
      >
        {() => (
          <>
            <ImportSheet
              found={found}
              fields={fields}
              address={`${address}/import`}
              hidden={{ programme: code, lot: lot.code, method, file }}
              action={testLot}
              label="Record the test"
            >
              <Section heading={`The test: ${target.method.label.toLowerCase()}`}>
                <TestFacts at={at} lot={lot} method={target.method} given={given} />
                <PreviewButton />
                <WhatItWouldTurn />
              </Section>
            </ImportSheet>
            <p>
              <ButtonLink href={address}>Back to the lot; nothing is stored</ButtonLink>
            </p>
          </>
        )}
      </ProgrammeSheet>
    )
  },
)

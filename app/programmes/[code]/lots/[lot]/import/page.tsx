import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import { lotAddress, lotsAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { mappingFrom } from '@/app/imports/mapping'
import { Preview } from '@/app/imports/preview'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { SubmitButton } from '@/app/ui/submit-button'
import { readImport } from '@/lib/queries/import-preview'
import { lotTarget, targetFields } from '@/lib/readings/import-target'
import { refusal } from '@/shared/policy'
import { testLot } from '../../actions'
import { TestFacts } from '../test-facts'

interface ImportPageProps {
  params: Promise<{ code: string; lot: string }>
  searchParams: Promise<Record<string, string | undefined>>
}

/** A file of test readings: which column is which, what is wrong, and the facts of the test to confirm with. */
export default async function LotImportPage({ params, searchParams }: ImportPageProps) {
  const { code: asked, lot: key } = await params
  const given = await searchParams
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const lot = visit.view?.state.facts.records.lots.find((entry) => entry.code === decodeURIComponent(key))
  if (visit.view && !lot) notFound()
  const [file, method] = [given['file'] ?? '', given['method'] ?? '']
  const target = lot && lotTarget(lot.code, method)
  const fields = target ? targetFields(target) : []
  const mapping = mappingFrom(given, fields)
  const may = visit.view && !refusal('test-lot', visit.view.actor)
  const found = target && may ? await readImport(file, fields, mapping) : undefined
  const address = lotAddress(code, lot?.code ?? key)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[
        { text: 'Lots', href: lotsAddress(code) },
        { text: lot?.code ?? key, href: address },
        { text: 'Import' },
      ]}
      title={`Test of lot ${lot?.code ?? key}`}
      supplement="All readings of the file, or none"
    >
      {(view) =>
        found && lot && target?.kind === 'lot' ? (
          <>
            <Preview
              found={found}
              fields={fields}
              mapping={mapping}
              address={`${address}/import`}
              keep={{ file, method }}
            />
            {found.parsed.ok && (
              <CommandForm
                action={testLot}
                formKey={randomUUID()}
                hidden={{
                  programme: code,
                  lot: lot.code,
                  method,
                  file,
                  ...Object.fromEntries(
                    Object.entries(found.parsed.mapping).map(([name, heading]) => [`map.${name}`, heading]),
                  ),
                }}
                label="Record the test"
              >
                <TestFacts view={view} method={target.method} />
                <SubmitButton pendingText="Recording …">
                  Record the test with {found.parsed.readings.count} readings
                </SubmitButton>
              </CommandForm>
            )}
            <ButtonLink href={address}>Back to the lot; nothing is stored</ButtonLink>
          </>
        ) : (
          <Notice kind="refusal" title="There is no such file">
            Send it again from the lot’s page.
          </Notice>
        )
      }
    </ProgrammeSheet>
  )
}

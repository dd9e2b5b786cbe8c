import { notFound } from 'next/navigation'
import { lotAddress, lotsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { fileReaderOf } from '@/app/imports/importer'
import { ImportSheet } from '@/app/imports/import-sheet'
import { mappingFrom } from '@/app/imports/chosen-mapping'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { readImport } from '@/lib/queries/read-import'
import { lotTarget, targetFields } from '@/lib/readings/import-target'
import { refusal } from '@/shared/policy'
import { testLot } from '../../actions'
import { TestFacts } from '../test-facts'

interface ImportPageProps {
  params: Promise<{ code: string; lot: string }>
  searchParams: Promise<Record<string, string | undefined>>
}

/** A file of test readings: which column is which, and the facts of the test to confirm with. */
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
  const refused = visit.view && refusal('test-lot', visit.view.actor)
  const found =
    visit.view && target && !refused
      ? await readImport(file, fileReaderOf(visit), fields, mappingFrom(given, fields))
      : undefined
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
      {(view) => (
        <>
          {found && lot && target?.kind === 'lot' ? (
            <ImportSheet
              found={found}
              fields={fields}
              address={`${address}/import`}
              hidden={{ programme: code, lot: lot.code, method, file }}
              action={testLot}
              label="Record the test"
            >
              <Section heading={`The test: ${target.method.label.toLowerCase()}`}>
                <TestFacts view={view} method={target.method} given={given} />
              </Section>
            </ImportSheet>
          ) : (
            <Notice
              kind="refusal"
              title={refused ? 'You may not record a test here' : 'There is no such file'}
            >
              {refused ?? 'Send it again from the lot’s page.'}
            </Notice>
          )}
          <p>
            <ButtonLink href={address}>Back to the lot; nothing is stored</ButtonLink>
          </p>
        </>
      )}
    </ProgrammeSheet>
  )
}

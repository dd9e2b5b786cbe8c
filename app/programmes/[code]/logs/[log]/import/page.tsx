import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import { logAddress, logsAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { mappingFrom } from '@/app/imports/mapping'
import { Preview } from '@/app/imports/preview'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { SubmitButton } from '@/app/ui/submit-button'
import { readImport } from '@/lib/queries/import-preview'
import { rememberedMapping } from '@/lib/queries/remembered-mapping'
import { logTarget, targetFields } from '@/lib/readings/import-target'
import { refusal } from '@/shared/policy'
import { importLog } from './actions'

interface ImportPageProps {
  params: Promise<{ code: string; log: string }>
  searchParams: Promise<Record<string, string | undefined>>
}

/** A file about to go into a log: which column is which, what is wrong, and the confirmation. */
export default async function LogImportPage({ params, searchParams }: ImportPageProps) {
  const { code: asked, log: key } = await params
  const given = await searchParams
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const log = [...(visit.view?.state.facts.records.logs.values() ?? [])]
    .flat()
    .find((entry) => entry.code === decodeURIComponent(key))
  if (visit.view && !log) notFound()
  const file = given['file'] ?? ''
  const fields = log ? targetFields(logTarget(log.code, log.characteristic)) : []
  const mapping = mappingFrom(given, fields) ?? (log && (await rememberedMapping(log.id)))
  const may = visit.view && !refusal('add-readings', visit.view.actor)
  const found = log && may ? await readImport(file, fields, mapping) : undefined
  const address = logAddress(code, log?.code ?? key)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={logsAddress(code)}
      place={[
        { text: 'Logs', href: logsAddress(code) },
        { text: log?.code ?? key, href: address },
        { text: 'Import' },
      ]}
      title={`Import into ${log?.code ?? key}`}
      supplement="All readings of the file, or none"
    >
      {() =>
        found && log ? (
          <>
            <Preview
              found={found}
              fields={fields}
              mapping={mapping}
              address={`${address}/import`}
              keep={{ file }}
            />
            {found.parsed.ok && (
              <CommandForm
                action={importLog}
                formKey={randomUUID()}
                hidden={{
                  programme: code,
                  log: log.code,
                  characteristic: log.characteristic,
                  file,
                  ...Object.fromEntries(
                    Object.entries(found.parsed.mapping).map(([name, heading]) => [`map.${name}`, heading]),
                  ),
                }}
                label="Confirm the import"
              >
                <SubmitButton pendingText="Importing …">
                  Import {found.parsed.readings.count} readings
                </SubmitButton>
              </CommandForm>
            )}
            <ButtonLink href={address}>Back to the log; nothing is stored</ButtonLink>
          </>
        ) : (
          <Notice kind="refusal" title="There is no such file">
            Send it again from the log’s page.
          </Notice>
        )
      }
    </ProgrammeSheet>
  )
}

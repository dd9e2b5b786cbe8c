import { forbidden, notFound } from 'next/navigation'
import { machineAddress, machineLogAddress, worksAddress } from '@/app/addresses'
import { addressPart } from '@/app/address-part'
import { TextBox } from '@/app/forms/fields'
import { importerFor } from '@/app/imports/importer'
import { ImportSheet } from '@/app/imports/import-sheet'
import { formFrom } from '@/app/imports/chosen-form'
import { mappingFrom } from '@/app/imports/chosen-mapping'
import { ButtonLink } from '@/app/ui/button'
import { visitWorks } from '@/app/works/visit-works'
import { WorksSheet } from '@/app/works/works-sheet'
import { readImport } from '@/lib/queries/read-import'
import { readMachineLog } from '@/lib/queries/works/machine-log'
import { rememberedMapping } from '@/lib/queries/remembered-mapping'
import { works } from '@/lib/settings/works'
import { refusal } from '@/shared/policy'
import { LOG_IMPORT } from '../log-import'
import { importLog } from './actions'
import { isTimedFromStart, logFields } from './log-fields'

interface ImportPageProps {
  readonly params: Promise<{ machine: string; log: string }>
  readonly searchParams: Promise<Record<string, string | undefined>>
}

export const generateMetadata = async ({ params }: ImportPageProps) => ({
  title: `Import into ${addressPart((await params).log)} – Liquidus`,
})

/** A file about to go into a log: which column is which, what is wrong, and the confirmation. */
export default async function ImportPage({ params, searchParams }: ImportPageProps) {
  const { machine: code, log: name } = await params
  const [machine, logName] = [addressPart(code), addressPart(name)]
  const address = machineLogAddress(machine, logName)
  const { person, actor } = await visitWorks(address)
  if (refusal('add-readings', actor)) forbidden()
  const view = await readMachineLog(machine, logName)
  if (!view) notFound()
  const given = await searchParams
  const file = given['file'] ?? ''
  const fields = logFields(view.log.code, view.log.characteristic)
  const found = await readImport(
    file,
    importerFor(LOG_IMPORT, person, view).reader,
    fields,
    { mapping: mappingFrom(given, fields), form: formFrom(given) },
    undefined,
    await rememberedMapping(view.state.id),
  )
  if (!found) notFound()
  return (
    <WorksSheet
      person={person}
      at={worksAddress()}
      place={[
        { text: machine, href: machineAddress(machine) },
        { text: logName, href: address },
        { text: 'Import' },
      ]}
      title={`Import into ${logName}`}
      supplement="Every reading of the file, or none"
    >
      <ImportSheet
        found={found}
        fields={fields}
        address={`${address}/import`}
        hidden={{ machine, log: logName, file }}
        action={importLog}
        label="Import the file"
      >
        {found.parsed.ok && isTimedFromStart(found.parsed.readings) && (
          <TextBox
            name="startedAt"
            type="datetime-local"
            step="1"
            label={`The pass began at, ${works().timeZone}`}
            hint="The file tells seconds from the start only."
            required
          />
        )}
      </ImportSheet>
      <p>
        <ButtonLink href={address}>Back to the log; nothing is stored</ButtonLink>
      </p>
    </WorksSheet>
  )
}

import { forbidden, notFound } from 'next/navigation'
import { logAddress, logsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { TextBox } from '@/app/forms/fields'
import { LOG_IMPORT } from './log-import'
import { importerFor } from '@/app/imports/importer'
import { ImportSheet } from '@/app/imports/import-sheet'
import { formFrom } from '@/app/imports/chosen-form'
import { mappingFrom } from '@/app/imports/chosen-mapping'
import { ButtonLink } from '@/app/ui/button'
import { readImport } from '@/lib/queries/read-import'
import { rememberedMapping } from '@/lib/queries/remembered-mapping'
import { works } from '@/lib/settings/works'
import { refusal } from '@/shared/policy'
import { logOf } from '../log-of'
import { importLog } from './actions'
import { isTimedFromStart, logFields } from './log-fields'

export const generateMetadata = programmeTitle<{ log: string }>(
  ({ code, log }) => `Import into ${log}, ${code}`,
)

/** A file about to go into a log: which column is which, what is wrong, and the confirmation. */
export default programmePage<{ log: string }>(
  async ({ visit, code, params: { log: key }, searchParams: given }) => {
    const log = logOf(visit.view, key)
    if (!log) notFound()
    const file = given['file'] ?? ''
    const fields = logFields(log.code, log.characteristic)
    if (refusal('add-readings', visit.view.actor)) forbidden()
    const found = await readImport(
      file,
      importerFor(LOG_IMPORT, visit.person, visit.view).reader,
      fields,
      { mapping: mappingFrom(given, fields), form: formFrom(given) },
      undefined,
      await rememberedMapping(log.id),
    )
    if (!found) notFound()
    const address = logAddress(code, log.code)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={logsAddress(code)}
        place={[
          { text: 'Logs', href: logsAddress(code) },
          { text: log.code, href: address },
          { text: 'Import' },
        ]}
        title={`Import into ${log.code}`}
        supplement="Every reading of the file, or none"
      >
        {() => (
          <>
            <ImportSheet
              found={found}
              fields={fields}
              address={`${address}/import`}
              hidden={{ programme: code, log: log.code, file }}
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
          </>
        )}
      </ProgrammeSheet>
    )
  },
)

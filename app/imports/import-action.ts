import type { FormAction } from '@/app/forms/form-state'
import { sentBack, submit } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { importerInto } from '@/app/imports/importer'
import type { Prepare } from '@/app/imports/prepared'
import type { NameWithoutSubject } from '@/shared/commands/all-faces'

/** The server action of a form whose input has to be prepared, such as read from a file that was previewed. */
export const importAction =
  (command: NameWithoutSubject, prepare: Prepare): FormAction =>
  async (_state, form) => {
    const importer = await importerInto(text(form, 'programme'), command)
    if ('message' in importer) return sentBack(form, importer.message)
    const prepared = await prepare(importer, form)
    return 'message' in prepared
      ? sentBack(form, prepared.message, prepared.fields)
      : submit(command, form, () => prepared.input)
  }

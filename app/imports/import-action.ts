import type { FormAction } from '@/app/forms/form-state'
import { sentBack, submit } from '@/app/forms/submit'
import { importerInto, type ImportPlace } from '@/app/imports/importer'
import type { Prepare } from '@/app/imports/prepared'

/** The server action of a form whose input has to be prepared, such as read from a file that was previewed. */
export const importAction =
  <Params, Into>(place: ImportPlace<Params, Into>, prepare: Prepare<Into>): FormAction =>
  async (_state, form) => {
    const importer = await importerInto(place, form)
    if ('message' in importer) return sentBack(form, importer.message)
    const prepared = await prepare(importer, form)
    return 'message' in prepared
      ? sentBack(form, prepared.message, prepared.fields)
      : submit(place.command, form, () => prepared.input)
  }

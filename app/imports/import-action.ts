import type { FormAction } from '@/app/forms/form-state'
import { asksForPreview } from '@/app/forms/form-action'
import { previewAtWorks, sentBack, submit } from '@/app/forms/submit'
import { importerInto, type ImportPlace } from '@/app/imports/importer'
import type { Prepare } from '@/app/imports/prepared'
import type { Previewed } from '@/lib/commands/considered/what-it-changes'

/**
 * The server action of a form whose input has to be prepared, such as read from a file that was previewed; where the
 * command is named as `previewed`, the form may also ask what sending it would turn.
 */
export const importAction =
  <Params, Into>(
    place: ImportPlace<Params, Into>,
    prepare: Prepare<Into>,
    previewed?: Previewed,
  ): FormAction =>
  async (_state, form) => {
    const importer = await importerInto(place, form)
    if ('message' in importer) return sentBack(form, importer.message)
    const prepared = await prepare(importer, form)
    if ('message' in prepared) return sentBack(form, prepared.message, prepared.fields)
    return previewed && asksForPreview(form)
      ? previewAtWorks(previewed, form, () => prepared.input)
      : submit(place.command, form, () => prepared.input)
  }

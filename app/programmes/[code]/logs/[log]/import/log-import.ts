import { text } from '@/app/forms/typed-text'
import { mayInProgramme } from '@/app/guard/rights'
import type { ImportPlace } from '@/app/imports/importer'
import type { ProgrammeView } from '@/lib/queries/programme-reader'

/** Readings of a log, imported into the programme that holds it. */
export const LOG_IMPORT: ImportPlace<{ code: string }, ProgrammeView> = {
  command: 'add-readings',
  rights: mayInProgramme('add-readings'),
  paramsIn: (form) => ({ code: text(form, 'programme') }),
  trailIdOf: ({ state }) => state.programme.id,
}

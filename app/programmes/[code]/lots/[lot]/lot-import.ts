import { text } from '@/app/forms/typed-text'
import { mayInProgramme } from '@/app/guard/rights'
import type { ImportPlace } from '@/app/imports/importer'
import type { ProgrammeView } from '@/lib/queries/programme-reader'

/** Readings of a lot's test, imported into the programme that holds the lot. */
export const LOT_IMPORT: ImportPlace<{ code: string }, ProgrammeView> = {
  command: 'test-lot',
  rights: mayInProgramme('test-lot'),
  paramsIn: (form) => ({ code: text(form, 'programme') }),
  trailIdOf: ({ state }) => state.programme.id,
}

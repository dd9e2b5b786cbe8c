import type { Importer } from '@/app/imports/importer'
import { formFrom } from '@/app/imports/chosen-form'
import { mappingFrom, readingText, textsIn } from '@/app/imports/chosen-mapping'
import { readImport } from '@/lib/queries/read-import'
import type { ReadingField } from '@/lib/readings/reading-field'
import type { ColumnMapping } from '@/lib/readings/column-mapping'
import type { Readings } from '@/shared/records/readings'

/** A command's input, still to be parsed, or why there is none. */
type Prepared =
  | { readonly input: unknown }
  | { readonly message: string; readonly fields?: Readonly<Record<string, string>> }

export type TellProgress = (read: number, of: number) => void

/** Makes a command’s input of a form, for somebody who may give the command. */
export type Prepare<Into> = (
  importer: Importer<Into>,
  form: FormData,
  tell?: TellProgress,
) => Promise<Prepared>

type FileReadings =
  { readonly readings: Readings; readonly mapping: ColumnMapping } | { readonly message: string }

/** The readings of a previewed file, read again from the store as the preview read them. */
export async function readingsOfFile(
  { reader }: Importer<unknown>,
  form: FormData,
  file: string,
  fields: readonly ReadingField[],
  tell?: TellProgress,
): Promise<FileReadings> {
  const given = textsIn(form)
  const mapping = mappingFrom(given, fields)
  const as = formFrom(given)
  if (readingText(mapping, as) !== given['seen'])
    return {
      message:
        'The columns or the way of reading were changed. Read the file again so, look at it, then import it.',
    }
  const found = await readImport(file, reader, fields, { mapping, form: as }, tell)
  if (!found) return { message: 'The file is no longer there. Send it again.' }
  if (!found.parsed.ok)
    return { message: 'The file cannot be imported as it is; see what is wrong with it. Nothing was stored.' }
  return { readings: found.parsed.readings, mapping: found.parsed.mapping }
}

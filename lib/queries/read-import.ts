import { installedStore } from '@/lib/evidence/installed-store'
import type { FileReader } from '@/lib/evidence/reached-file'
import { isFileReached } from '@/lib/queries/stored-file'
import type { ColumnMapping } from '@/lib/readings/column-mapping'
import type { FileForm } from '@/lib/readings/file-form'
import { parseReadings, type ReadingsImport } from '@/lib/readings/parse-readings'
import { previewReadings, type ReadingsPreview } from '@/lib/readings/preview-readings'
import type { ReadingField } from '@/lib/readings/reading-field'
import { works } from '@/lib/settings/works'
import { isArchive, workbookAsText } from '@/lib/spreadsheets/workbook-in-thread'
import { Refused } from '@/shared/refused'

const ENOUGH_TO_PREVIEW = 64 * 1024

export interface ImportPreview {
  readonly preview: ReadingsPreview | undefined
  readonly parsed: ReadingsImport
  /** Which column is which, as the file was read. */
  readonly mapping: ColumnMapping | undefined
}

/** What a person chose of how a file is read. */
export interface ChosenReading {
  readonly mapping: ColumnMapping | undefined
  readonly form: Partial<FileForm>
}

/**
 * A stored CSV file or workbook read for these fields, as it would be imported. Without a mapping, the
 * remembered one is used where the file has its headings, else the suggested one. Undefined, before
 * anything of it is read, when the file is not there for this person in this programme.
 */
export async function readImport(
  sha256: string,
  reader: FileReader,
  fields: readonly ReadingField[],
  chosen: ChosenReading,
  tell?: (bytesRead: number, ofBytes: number) => void,
  remembered?: ColumnMapping,
): Promise<ImportPreview | undefined> {
  if (!(await isFileReached(sha256, reader))) return undefined
  const stored = await (await installedStore()).read(sha256)
  const file = await textOfFile(stored, chosen.form)
  if ('refused' in file) return { preview: undefined, parsed: refusedWhole(file.refused), mapping: undefined }
  const { content } = file
  const start = content.subarray(0, ENOUGH_TO_PREVIEW)
  const shown = previewReadings(start, fields, works())
  const form = shown && { ...shown.form, ...chosen.form, ...file.form }
  const preview = form && previewReadings(start, fields, works(), form)
  const fitting =
    remembered && Object.values(remembered).every((heading) => preview?.headings.includes(heading))
  const mapping = chosen.mapping ?? (fitting ? remembered : preview?.suggested)
  const parsed = await parseReadings(content, fields, {
    works: works(),
    ...(form && { form }),
    ...(mapping && { mapping }),
    ...(tell && { onProgress: ({ bytesRead }) => tell(bytesRead, content.byteLength) }),
  })
  return { preview, parsed, mapping }
}

/** A file's text as it is; of a workbook the text of its first sheet, whose form is known. */
async function textOfFile(
  stored: Buffer,
  chosen: Partial<FileForm>,
): Promise<{ readonly content: Buffer; readonly form: Partial<FileForm> } | { readonly refused: string }> {
  if (!isArchive(stored)) return { content: stored, form: {} }
  const decimal = chosen.decimal ?? works().notation.decimal
  try {
    return { content: await workbookAsText(stored, decimal), form: { delimiter: '\t', decimal } }
  } catch (error) {
    if (error instanceof Refused) return { refused: error.message }
    throw error
  }
}

const refusedWhole = (message: string): ReadingsImport => ({
  ok: false,
  errors: [{ line: 1, column: undefined, message }],
  errorCount: 1,
})

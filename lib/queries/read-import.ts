import { installedStore } from '@/lib/evidence/installed-store'
import type { FileReader } from '@/lib/evidence/reached-file'
import type { ColumnMapping } from '@/lib/readings/column-mapping'
import { parseReadings, type ReadingsImport } from '@/lib/readings/parse-readings'
import { previewReadings, type ReadingsPreview } from '@/lib/readings/preview-readings'
import type { ReadingField } from '@/lib/readings/reading-field'
import { isFileReached } from '@/lib/queries/stored-file'

const ENOUGH_TO_PREVIEW = 64 * 1024

export interface ImportPreview {
  readonly preview: ReadingsPreview | undefined
  readonly parsed: ReadingsImport
  /** Which column is which, as the file was read. */
  readonly mapping: ColumnMapping | undefined
}

/**
 * A stored CSV file read for these fields, as it would be imported. Without a mapping, the
 * remembered one is used where the file has its headings, else the suggested one. Undefined, before
 * anything of it is read, when the file is not there for this person in this programme.
 */
export async function readImport(
  sha256: string,
  reader: FileReader,
  fields: readonly ReadingField[],
  chosen: ColumnMapping | undefined,
  tell?: (bytesRead: number, ofBytes: number) => void,
  remembered?: ColumnMapping,
): Promise<ImportPreview | undefined> {
  if (!(await isFileReached(sha256, reader))) return undefined
  const store = await installedStore()
  const content = await store.read(sha256)
  const preview = previewReadings(content.subarray(0, ENOUGH_TO_PREVIEW), fields)
  const fitting =
    remembered && Object.values(remembered).every((heading) => preview?.headings.includes(heading))
  const mapping = chosen ?? (fitting ? remembered : preview?.suggested)
  const parsed = await parseReadings(content, fields, {
    ...(mapping && { mapping }),
    ...(tell && { onProgress: ({ bytesRead }) => tell(bytesRead, content.byteLength) }),
  })
  return { preview, parsed, mapping }
}

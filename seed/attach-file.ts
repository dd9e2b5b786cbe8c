import { Readable } from 'node:stream'
import { installedStore } from '@/lib/evidence/installed-store'
import type { FileReader } from '@/lib/evidence/reached-file'
import { registerFile } from '@/lib/evidence/register-file'
import type { DemoPerson } from '@/seed/people'
import type { Story } from '@/seed/story'

/** Puts a text into the evidence store as a file that somebody sends for the programme, and answers its hash. */
export const storeText = async (
  story: Story,
  who: DemoPerson,
  fileName: string,
  text: string,
): Promise<string> => storeTextFor(await story.fileReader(who), fileName, text)

/** The same, for whatever the file is sent for. */
export async function storeTextFor(reader: FileReader, fileName: string, text: string): Promise<string> {
  const store = await installedStore()
  const content = await store.put(Readable.from([Buffer.from(text)]), { fileName })
  await registerFile(content, reader)
  return content.sha256
}

/** Attaches a text file to an item of the story's programme. */
export async function attachText(
  story: Story,
  who: DemoPerson,
  item: string,
  kind: string,
  fileName: string,
  text: string,
  note = '',
): Promise<void> {
  await story.do(who, 'attach-evidence', {
    item,
    kind,
    note,
    what: { sha256: await storeText(story, who, fileName, text), fileName },
  })
}

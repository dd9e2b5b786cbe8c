import { fileTypeFromFile } from 'file-type'
import { Refused } from '@/shared/refused'
import {
  CONTENT_KINDS,
  extensionOf,
  hasExtension,
  KEPT_KINDS_IN_WORDS,
  kindAnnouncedBy,
  type ContentKind,
  type MediaType,
} from './content-kind'
import { readTextContent } from './text-content'

const KIND_OF_MEDIA_TYPE = new Map<string, ContentKind>(
  (Object.keys(CONTENT_KINDS) as ContentKind[])
    .filter((kind) => !['json', 'gerber', 'excellon', 'csv', 'text'].includes(kind))
    .map((kind) => [CONTENT_KINDS[kind].mediaType, kind]),
)

/**
 * The media type of a file, decided by its content. Refuses, with a sentence for the
 * person, a kind that is not kept and a name whose ending announces another kind.
 *
 * @param fileName as the sender named it; leave it out to judge the content alone
 */
export async function decideMediaType(path: string, size: number, fileName?: string): Promise<MediaType> {
  const called = fileName ? `"${fileName}"` : 'The file'
  const kind = await kindOf(path, size, called)
  const extension = fileName ? extensionOf(fileName) : ''
  if (extension === '') return CONTENT_KINDS[kind].mediaType

  const announced = kindAnnouncedBy(extension)
  if (!announced) {
    throw new Refused(
      `${called} ends in ".${extension}", which is not kept as evidence. Kept are ${KEPT_KINDS_IN_WORDS}.`,
    )
  }
  if (!hasExtension(kind, extension)) {
    throw new Refused(
      `${called} is named as ${CONTENT_KINDS[announced].words}, but its content is ${CONTENT_KINDS[kind].words}. ` +
        'Choose the right file, or correct its name.',
    )
  }
  // Text is a table when its name says so, and plain text when its name says that.
  if (kind === 'text' && extension === 'csv') return CONTENT_KINDS.csv.mediaType
  if (kind === 'csv' && extension !== 'csv') return CONTENT_KINDS.text.mediaType
  return CONTENT_KINDS[kind].mediaType
}

async function kindOf(path: string, size: number, called: string): Promise<ContentKind> {
  const text = await readTextContent(path, size)
  switch (text.is) {
    case 'text':
      return text.kind
    case 'refused':
      throw new Refused(`${called} is ${text.why}`)
    case 'perhaps-other-text':
      return (await binaryKind(path)).kind ?? refuse(`${called} is ${text.why}`)
    case 'not-text': {
      const { kind, mime } = await binaryKind(path)
      const what = mime ? `of the kind ${mime}` : 'of no kind that is known here'
      return (
        kind ??
        refuse(`${called} is ${what}, which is not kept as evidence. Kept are ${KEPT_KINDS_IN_WORDS}.`)
      )
    }
  }
}

async function binaryKind(
  path: string,
): Promise<{ kind: ContentKind | undefined; mime: string | undefined }> {
  // Whatever a broken or hostile file does to the reader of signatures, it is of no kind that is known.
  const found = await fileTypeFromFile(path).catch(() => undefined)
  return { kind: found && KIND_OF_MEDIA_TYPE.get(found.mime), mime: found?.mime }
}

function refuse(sentence: string): never {
  throw new Refused(sentence)
}

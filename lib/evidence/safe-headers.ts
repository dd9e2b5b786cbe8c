import { create } from 'content-disposition'
import { extensionOf, CONTENT_KINDS, type ContentKind } from './content-kind'
import { FILE_POLICY } from './file-policy'
import type { StoredContent } from './store'

const LONGEST_NAME = 120

/** Controls, and marks that reverse or hide parts of a name as it is shown. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Surrogate}]/gu
/** Characters with a meaning in a path or to a shell on some system. */
const PATH_MEANING = /[<>:"|?*]/g

/**
 * The headers for serving stored content so that a browser saves it and never runs it: always an
 * attachment, its type not to be guessed at, without scripts or outside content if it is shown
 * after all. Content never changes under its hash, so the person's own browser may keep it.
 *
 * Sources: RFC 6266 and RFC 8187 (the name), OWASP ASVS 5.0.0 V5.3.1, V5.4.1 and V5.4.2.
 */
export const safeHeaders = (
  content: Pick<StoredContent, 'sha256' | 'size'> & { readonly mediaType: string },
  fileName: string,
): Record<string, string> => ({
  'Content-Type': /^text\/|json$/.test(content.mediaType)
    ? `${content.mediaType}; charset=utf-8`
    : content.mediaType,
  'Content-Length': String(content.size),
  'Content-Disposition': create(nameForSaving(fileName, content.mediaType)),
  'Content-Security-Policy': FILE_POLICY,
  'X-Content-Type-Options': 'nosniff',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'private, max-age=31536000, immutable',
  ETag: `"${content.sha256}"`,
})

/**
 * A name that is safe to save under: no folders, nothing unseen, not too long, and with an
 * ending of its own kind, so that text named "report.html" is not opened as a web page.
 */
export function nameForSaving(fileName: string, mediaType: string): string {
  const bare = (fileName.normalize('NFC').split(/[/\\]/).pop() ?? '')
    .replace(UNSEEN, '')
    .replace(PATH_MEANING, '_')
    .trim()
    .replace(/^\.+/, '')
    .replace(/[. ]+$/, '')
  const extension = extensionOf(bare)
  const fitting = extensionsOf(mediaType)
  const [stem, ending] = fitting.includes(extension)
    ? [bare.slice(0, -extension.length - 1), extension]
    : [bare, fitting[0] ?? 'bin']
  return `${[...stem].slice(0, LONGEST_NAME).join('') || 'evidence'}.${ending}`
}

const extensionsOf = (mediaType: string): string[] =>
  (Object.keys(CONTENT_KINDS) as ContentKind[])
    .filter((kind) => CONTENT_KINDS[kind].mediaType === mediaType)
    .flatMap((kind) => [...CONTENT_KINDS[kind].extensions])

import { createReadStream } from 'node:fs'
import type { ContentKind } from './content-kind'

/** What a file is when read as text. */
export type TextContent =
  | { readonly is: 'text'; readonly kind: ContentKind }
  /** Text that is not kept; `why` ends a sentence that begins "The file is …" and says what to do. */
  | { readonly is: 'refused'; readonly why: string }
  /** Not UTF-8, but perhaps text in another encoding; `why` as above. */
  | { readonly is: 'perhaps-other-text'; readonly why: string }
  | { readonly is: 'not-text' }

const HEAD_BYTES = 64 * 1024
/** A JSON document is parsed to be sure, so it has to be of a size to be parsed in one go. */
const LARGEST_JSON_BYTES = 8 * 1024 * 1024

/** Control characters that no text file has; tab, line feeds, form feed and the old end mark (SUB) it may have. */
const CONTROLS = /[\0-\x08\x0e-\x19\x1b-\x1f\x7f]/

/** Reads the whole file in pieces, because an odd byte may stand anywhere. */
export async function readTextContent(path: string, size: number): Promise<TextContent> {
  const decoder = new TextDecoder('utf-8', { fatal: true })
  let line = 1
  let kept = ''
  let isWhole = true
  const pieces = createReadStream(path, { highWaterMark: HEAD_BYTES }) as AsyncIterable<Buffer>
  for await (const piece of pieces) {
    if (line === 1 && kept === '') {
      if (startsAsUtf16(piece)) return otherEncoding('in UTF-16')
      // A PDF may consist of text throughout.
      if (piece.subarray(0, 5).toString('latin1') === '%PDF-') return NOT_TEXT
    }
    let text: string
    try {
      text = decoder.decode(piece, { stream: true })
    } catch {
      return looksLikeOneByteText(piece)
        ? otherEncoding(`not in UTF-8 (line ${line} or soon after)`)
        : NOT_TEXT
    }
    if (CONTROLS.test(text)) return NOT_TEXT
    line += text.split('\n').length - 1
    if (kept === '' || mayBeJson(kept, size)) kept += text
    else isWhole = false
  }
  try {
    decoder.decode()
  } catch {
    return otherEncoding(`not in UTF-8 (line ${line})`)
  }
  return classify(kept, isWhole)
}

const NOT_TEXT: TextContent = { is: 'not-text' }

const otherEncoding = (how: string): TextContent => ({
  is: 'perhaps-other-text',
  why: `text, but ${how}. Save it as UTF-8 and send it again.`,
})

const mayBeJson = (start: string, size: number): boolean =>
  size <= LARGEST_JSON_BYTES && /^\s*[[{]/.test(start)

const startsAsUtf16 = (bytes: Buffer): boolean =>
  bytes.length >= 2 && ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff))

/** One-byte encodings (Latin-1 and its kin) use the bytes from 0xA0 up, and no controls. */
const looksLikeOneByteText = (bytes: Buffer): boolean => !CONTROLS.test(bytes.toString('latin1'))

/** Beginnings that make text more than text: by the formats' own rules, what comes first decides how it is read. */
const ACTIVE_BEGINNINGS: readonly (readonly [RegExp, string])[] = [
  [/^#!|^<\?(php|=)/i, 'a script'],
  [/^<(\w+:)?svg[\s/>]|^<!doctype\s+svg/i, 'an SVG drawing, which can hold scripts'],
  [
    /^<(!doctype\s+html|(html|head|body|script|iframe|style|title|h1|div|table|a|p|br|meta|link|img)[\s/>])/i,
    'a web page (HTML)',
  ],
  [/^<([?!]|[a-z_][\w.:-]*[\s/>])/i, 'an XML document'],
  [/^%!PS/, 'a PostScript program'],
  [/^\{\\rtf/, 'an RTF document'],
  [/^MIME-Version:/i, 'a mail message'],
]

/** Comments and an XML declaration may stand before the element that says what a document is. */
function withoutPrologue(text: string): string {
  let rest = text.trimStart()
  for (;;) {
    const end = rest.startsWith('<!--') ? '-->' : /^<\?xml/i.test(rest) ? '?>' : undefined
    const at = end === undefined ? -1 : rest.indexOf(end)
    if (end === undefined || at < 0) return rest
    rest = rest.slice(at + end.length).trimStart()
  }
}

function classify(text: string, isWhole: boolean): TextContent {
  const start = text.trimStart()
  const opening = withoutPrologue(start.slice(0, HEAD_BYTES))
  const active = ACTIVE_BEGINNINGS.find(([beginning]) => beginning.test(opening) || beginning.test(start))
  if (active) return { is: 'refused', why: `${active[1]}. That is not kept: send a PDF or a picture of it.` }
  if (isWhole && /^[[{]/.test(start) && parses(text)) return { is: 'text', kind: 'json' }
  if (isGerber(start)) return { is: 'text', kind: 'gerber' }
  if (isExcellon(start)) return { is: 'text', kind: 'excellon' }
  return { is: 'text', kind: isTable(start) ? 'csv' : 'text' }
}

function parses(text: string): boolean {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}

/** A layer states its number format (FS) or its unit (MO) between percent signs before it draws. */
const isGerber = (start: string): boolean =>
  /^(G0?4|%|G7[01]|G36|G01)/.test(start) && /%(FS[LT]?[AI]|MO(MM|IN)\*)/.test(start.slice(0, HEAD_BYTES))

/** A drill file opens with its header (M48), or at once with the size of a tool; comments may stand before. */
const isExcellon = (start: string): boolean => /^(;[^\n]*\n|%\r?\n)*(M48\s|T\d+[^\n]*C\d*\.\d+)/.test(start)

/** Two lines or more with the same number, not none, of the same separator. */
function isTable(start: string): boolean {
  const lines = start.split(/\r?\n/, 20).filter((line) => line !== '')
  const separatorCounts = [';', '\t', ','].map((separator) =>
    lines.map((line) => line.split(separator).length - 1),
  )
  return (
    lines.length > 1 &&
    separatorCounts.some((counts) => counts[0]! > 0 && counts.every((count) => count === counts[0]))
  )
}

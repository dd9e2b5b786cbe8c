/** What is kept as evidence, by content. `extensions` are the endings a file of that content may have. */
export const CONTENT_KINDS = {
  pdf: { mediaType: 'application/pdf', words: 'a PDF document', extensions: ['pdf'] },
  png: { mediaType: 'image/png', words: 'a PNG picture', extensions: ['png'] },
  jpeg: { mediaType: 'image/jpeg', words: 'a JPEG picture', extensions: ['jpg', 'jpeg'] },
  tiff: { mediaType: 'image/tiff', words: 'a TIFF picture', extensions: ['tif', 'tiff'] },
  webp: { mediaType: 'image/webp', words: 'a WebP picture', extensions: ['webp'] },
  docx: {
    mediaType: 'application/vnd.openxmlformats-officedocument.wordprocessingml.document',
    words: 'a text document (DOCX)',
    extensions: ['docx', 'zip'],
  },
  xlsx: {
    mediaType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
    words: 'a spreadsheet (XLSX)',
    extensions: ['xlsx', 'zip'],
  },
  ods: {
    mediaType: 'application/vnd.oasis.opendocument.spreadsheet',
    words: 'a spreadsheet (ODS)',
    extensions: ['ods', 'zip'],
  },
  zip: { mediaType: 'application/zip', words: 'a ZIP archive', extensions: ['zip'] },
  json: {
    mediaType: 'application/json',
    words: 'a JSON document (of 8 MiB at most)',
    extensions: ['json', 'txt', 'log'],
  },
  csv: {
    mediaType: 'text/csv',
    words: 'a table as text (CSV)',
    extensions: ['csv', 'txt', 'tsv', 'log', 'asc', 'dat'],
  },
  text: {
    mediaType: 'text/plain',
    words: 'plain text',
    extensions: ['txt', 'csv', 'tsv', 'log', 'asc', 'dat', 'md'],
  },
  // Fabrication data is text; it is served as such, whatever the programs that draw it call it.
  gerber: {
    mediaType: 'text/plain',
    words: 'a Gerber layer',
    extensions: [
      ...[
        'gbr',
        'ger',
        'gtl',
        'gbl',
        'gts',
        'gbs',
        'gto',
        'gbo',
        'gtp',
        'gbp',
        'gko',
        'gm1',
        'g1',
        'g2',
        'g3',
        'g4',
      ],
      ...['art', 'pho', 'txt'],
    ],
  },
  excellon: {
    mediaType: 'text/plain',
    words: 'an Excellon drill file',
    extensions: ['drl', 'xln', 'exc', 'drd', 'nc', 'tap', 'txt'],
  },
} as const satisfies Record<string, { mediaType: string; words: string; extensions: readonly string[] }>

export type ContentKind = keyof typeof CONTENT_KINDS
export type MediaType = (typeof CONTENT_KINDS)[ContentKind]['mediaType']

/** For a sentence that says what may be sent. */
export const KEPT_KINDS_IN_WORDS =
  'PDF, PNG, JPEG, TIFF, WebP, plain text, CSV, JSON, DOCX, XLSX, ODS, ZIP, Gerber and Excellon'

/** The ending of a file's name, lower case, without the dot; empty when it has none. */
export const extensionOf = (fileName: string): string =>
  /[^.\s]\.([^.\s/\\]{1,12})$/.exec(fileName.trim())?.[1]?.toLowerCase() ?? ''

/** The kind that an ending announces first; undefined for an ending that no kept kind has. */
export const kindAnnouncedBy = (extension: string): ContentKind | undefined =>
  (Object.keys(CONTENT_KINDS) as ContentKind[]).find(
    (kind) => CONTENT_KINDS[kind].extensions[0] === extension,
  ) ?? (Object.keys(CONTENT_KINDS) as ContentKind[]).find((kind) => hasExtension(kind, extension))

export const hasExtension = (kind: ContentKind, extension: string): boolean =>
  (CONTENT_KINDS[kind].extensions as readonly string[]).includes(extension)

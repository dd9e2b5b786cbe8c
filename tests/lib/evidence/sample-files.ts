import { gzipSync } from 'node:zlib'

/* Small files of each kind, built from the formats' own rules; nothing is drawn on them. */

const ascii = (text: string): Buffer => Buffer.from(text, 'latin1')

/** CRC-32 as ZIP and PNG use it: gzip writes the same one near its end. */
const crc32 = (bytes: Buffer): number => gzipSync(bytes).readUInt32LE(gzipSync(bytes).length - 8)

function pngChunk(kind: string, data: Buffer): Buffer {
  const body = Buffer.concat([ascii(kind), data])
  const length = Buffer.alloc(4)
  length.writeUInt32BE(data.length)
  const check = Buffer.alloc(4)
  check.writeUInt32BE(crc32(body))
  return Buffer.concat([length, body, check])
}

export const png = Buffer.concat([
  Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
  pngChunk('IHDR', Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0])),
  pngChunk('IDAT', Buffer.from([0x78, 0x9c, 0x63, 0, 0, 0, 2, 0, 1])),
  pngChunk('IEND', Buffer.alloc(0)),
])
export const jpeg = Buffer.concat([
  Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]),
  ascii('JFIF\0'),
  Buffer.alloc(32),
  Buffer.from([0xff, 0xd9]),
])
export const tiff = Buffer.concat([ascii('II*\0'), Buffer.from([8, 0, 0, 0, 0, 0, 0, 0, 0, 0])])
export const webp = Buffer.concat([
  ascii('RIFF'),
  Buffer.from([20, 0, 0, 0]),
  ascii('WEBPVP8 '),
  Buffer.alloc(16),
])
export const pdf = ascii(
  '%PDF-1.7\n%\xe2\xe3\xcf\xd3\n1 0 obj\n<< /Type /Catalog >>\nendobj\ntrailer << /Root 1 0 R >>\n%%EOF\n',
)
export const program = Buffer.concat([ascii('MZ'), Buffer.alloc(62), ascii('PE\0\0'), Buffer.alloc(64)])
export const elf = Buffer.concat([
  Buffer.from([0x7f]),
  ascii('ELF'),
  Buffer.from([2, 1, 1]),
  Buffer.alloc(64),
])

/** A ZIP archive whose members are stored as they are. */
export function zipOf(members: Readonly<Record<string, string>>): Buffer {
  const locals: Buffer[] = []
  const directory: Buffer[] = []
  let offset = 0
  for (const [name, text] of Object.entries(members)) {
    const data = ascii(text)
    const common = Buffer.alloc(26)
    common.writeUInt16LE(20, 0)
    common.writeUInt32LE(crc32(data), 10)
    common.writeUInt32LE(data.length, 14)
    common.writeUInt32LE(data.length, 18)
    common.writeUInt16LE(name.length, 22)
    const local = Buffer.concat([ascii('PK\x03\x04'), common, ascii(name), data])
    const place = Buffer.alloc(14)
    place.writeUInt32LE(offset, 10)
    directory.push(Buffer.concat([ascii('PK\x01\x02\x14\0'), common, place, ascii(name)]))
    locals.push(local)
    offset += local.length
  }
  const central = Buffer.concat(directory)
  const end = Buffer.alloc(18)
  end.writeUInt16LE(directory.length, 4)
  end.writeUInt16LE(directory.length, 6)
  end.writeUInt32LE(central.length, 8)
  end.writeUInt32LE(offset, 12)
  return Buffer.concat([...locals, central, ascii('PK\x05\x06'), end])
}

const officeTypes = (main: string): Record<string, string> => ({
  '[Content_Types].xml': `<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Override PartName="/main.xml" ContentType="${main}"/></Types>`,
})

export const zip = zipOf({ 'readings.txt': 'hello' })
export const xlsx = zipOf(
  officeTypes('application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml'),
)
export const docx = zipOf(
  officeTypes('application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml'),
)
export const macroSheet = zipOf(officeTypes('application/vnd.ms-excel.sheet.macroenabled.main+xml'))
export const ods = zipOf({ mimetype: 'application/vnd.oasis.opendocument.spreadsheet' })

export const gerber = ascii(
  'G04 Invented layer*\n%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,0.5*%\nD10*\nX0Y0D03*\nM02*\n',
)
export const excellon = ascii('; invented drill file\nM48\nMETRIC,TZ\nT1C0.8\n%\nT1\nX1.0Y2.0\nM30\n')
export const csv = Buffer.from('time;density\n2026-03-04 10:00;0,823\n', 'utf8')

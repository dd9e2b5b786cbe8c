import { createHash } from 'node:crypto'
import { mkdtemp, readdir, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { passingFolder } from '@/lib/evidence/evidence-paths'
import { receiveUpload, type UploadLimits } from '@/lib/evidence/receive-upload'
import { openEvidenceStore, type EvidenceStore } from '@/lib/evidence/store'
import { Refused } from '@/shared/refused'
import { pdf, png } from './sample-files'

let store: EvidenceStore
beforeEach(async () => {
  store = await openEvidenceStore(await mkdtemp(join(tmpdir(), 'upload-')))
})
afterEach(async () => {
  expect(await readdir(passingFolder(store.folder))).toEqual([])
  await rm(store.folder, { recursive: true })
})

const requestOf = (body: BodyInit, headers?: HeadersInit): Request =>
  new Request('http://localhost/upload', {
    method: 'POST',
    body,
    headers: headers ?? {},
    duplex: 'half',
  } as RequestInit)

function form(parts: readonly (readonly [string, string | File])[]): FormData {
  const data = new FormData()
  for (const [name, value] of parts) data.append(name, value)
  return data
}
const file = (content: Uint8Array | string, name: string): File => new File([content as BlobPart], name)
const receive = (body: BodyInit, limits?: Partial<UploadLimits>, headers?: HeadersInit) =>
  receiveUpload(requestOf(body, headers), store, limits)

test('fields and files arrive, files stored under their hashes', async () => {
  const upload = await receive(
    form([
      ['item', 'lead-holes'],
      ['file', file(png, 'Schliff Nr. 3 – März.png')],
      ['note', 'first'],
      ['note', 'zweite: °C'],
      ['file', file(pdf, 'report.pdf')],
    ]),
  )
  expect([...upload.fields]).toEqual([
    ['item', ['lead-holes']],
    ['note', ['first', 'zweite: °C']],
  ])
  expect(
    upload.files.map(({ field, fileName, mediaType, size }) => [field, fileName, mediaType, size]),
  ).toEqual([
    ['file', 'Schliff Nr. 3 – März.png', 'image/png', png.length],
    ['file', 'report.pdf', 'application/pdf', pdf.length],
  ])
  expect(upload.files[0]!.sha256).toBe(createHash('sha256').update(png).digest('hex'))
  expect(await store.read(upload.files[1]!.sha256)).toEqual(pdf)
})

test('a file field left empty is no file', async () => {
  const upload = await receive(
    form([
      ['file', file('', '')],
      ['note', 'x'],
    ]),
  )
  expect([upload.files, [...upload.fields.keys()]]).toEqual([[], ['note']])
})

test('a folder in the name is dropped', async () => {
  const body = Buffer.from(
    '--b\r\nContent-Disposition: form-data; name="f"; filename="../../a.txt"\r\n\r\nhello\r\n--b--\r\n',
  )
  const { files } = await receive(body, {}, { 'content-type': 'multipart/form-data; boundary=b' })
  expect(files[0]!.fileName).toBe('a.txt')
})

describe('what is wrong ends the upload with a sentence', () => {
  const many = (count: number) =>
    form(Array.from({ length: count }, (_, at) => ['f', file(`file ${at}`, `${at}.txt`)] as const))
  test.each<[string, () => BodyInit, Partial<UploadLimits>, RegExp]>([
    [
      'a file too large',
      () => form([['f', file('x'.repeat(200_000), 'long.txt')]]),
      { fileBytes: 100_000 },
      /"long\.txt" is larger/,
    ],
    [
      'a large file before good ones',
      () =>
        form([
          ['f', file('x'.repeat(300_000), 'l.txt')],
          ['f', file(png, 'a.png')],
        ]),
      { fileBytes: 100_000 },
      /"l\.txt" is larger/,
    ],
    [
      'a name that disagrees',
      () =>
        form([
          ['f', file(png, 'a.pdf')],
          ['f', file(pdf, 'b.pdf')],
        ]),
      {},
      /PDF.*PNG/,
    ],
    ['an empty file', () => form([['f', file('', 'a.txt')]]), {}, /"a\.txt" is empty/],
    ['too many files', () => many(4), { files: 3 }, /More than 3 files/],
    [
      'too many fields',
      () =>
        form([
          ['a', '1'],
          ['b', '2'],
        ]),
      { fields: 1 },
      /more than 1 fields/,
    ],
    [
      'a field too long',
      () => form([['a', 'x'.repeat(2_000)]]),
      { fieldBytes: 1_000 },
      /field "a" is longer/,
    ],
    [
      'too much altogether',
      () =>
        form([
          ['f', file('x'.repeat(90_000), 'a.txt')],
          ['f', file('y'.repeat(90_000), 'b.txt')],
        ]),
      { totalBytes: 100_000 },
      /altogether/,
    ],
  ])('%s', async (_, body, limits, message) => {
    const arrival = receive(body(), limits)
    await expect(arrival).rejects.toThrow(message)
    await expect(arrival).rejects.toBeInstanceOf(Refused)
  })

  test('a stated length beyond the limit is refused unread', async () => {
    const request = new Request('http://localhost/', {
      method: 'POST',
      body: 'x',
      headers: { 'content-type': 'multipart/form-data; boundary=b', 'content-length': '999999999999' },
    })
    await expect(receiveUpload(request, store)).rejects.toThrow(/altogether/)
  })
  test('no form, no boundary, no body', async () => {
    await expect(receive('x', {}, { 'content-type': 'text/plain' })).rejects.toThrow(/sent as a form/)
    await expect(receive('x', {}, { 'content-type': 'multipart/form-data' })).rejects.toThrow(/boundary/)
    await expect(receiveUpload(new Request('http://localhost/', { method: 'POST' }), store)).rejects.toThrow(
      /no content/,
    )
  })
})

const headed = (text: string): Uint8Array<ArrayBuffer> =>
  Buffer.from(`--b\r\nContent-Disposition: form-data; name="f"; filename="a.txt"\r\n\r\n${text}`)
const formHeaders = { 'content-type': 'multipart/form-data; boundary=b' }

describe('a sender that breaks off', () => {
  test('in the middle of a file', async () => {
    await expect(receive(headed('half of it'), {}, formHeaders)).rejects.toThrow(
      'broke off before it was complete',
    )
  })
  test('with a lost connection', async () => {
    let pulls = 0
    const lost = new ReadableStream<Uint8Array>({
      pull(controller) {
        pulls += 1
        if (pulls === 1) controller.enqueue(headed('some'))
        else controller.error(new Error('connection lost'))
      },
    })
    await expect(receive(lost, {}, formHeaders)).rejects.toThrow('broke off before it was complete')
  })
  test('in the middle of a header', async () => {
    await expect(receive(Buffer.from('--b\r\nContent-Dispo'), {}, formHeaders)).rejects.toBeInstanceOf(
      Refused,
    )
  })
})

test('a large file passes in pieces: the sender is held back and memory does not grow with it', async () => {
  const size = 48 * 1024 * 1024
  const piece = Buffer.alloc(64 * 1024, 'a')
  let sent = 0
  const body = new ReadableStream<Uint8Array>(
    {
      pull(controller) {
        if (sent === 0) controller.enqueue(headed(''))
        if (sent >= size) {
          controller.enqueue(Buffer.from('\r\n--b--\r\n'))
          return controller.close()
        }
        sent += piece.length
        controller.enqueue(piece)
      },
    },
    { highWaterMark: 1 },
  )
  const before = process.memoryUsage().arrayBuffers
  let max = 0
  const watch = setInterval(() => (max = Math.max(max, process.memoryUsage().arrayBuffers - before)), 5)
  const { files } = await receive(body, {}, formHeaders)
  clearInterval(watch)
  expect(files[0]!.size).toBe(size)
  expect(max).toBeLessThan(size / 2)
})

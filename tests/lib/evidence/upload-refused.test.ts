import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { receiveUpload } from '@/lib/evidence/receive-upload'
import { openEvidenceStore } from '@/lib/evidence/store'

test('what was typed before a refused file is still there to be shown again', async () => {
  const store = await openEvidenceStore(await mkdtemp(join(tmpdir(), 'upload-')))
  const form = new FormData()
  form.append('kind', 'drawing')
  form.append('note', 'Revision C')
  form.append('file', new File(['MZ\u0090\u0000 a program'], 'tool.exe'))
  const fields = new Map<string, string[]>()
  const request = new Request('http://localhost/upload', { method: 'POST', body: form })
  await expect(receiveUpload(request, store, {}, fields)).rejects.toThrow(/not kept as evidence/)
  expect([...fields]).toEqual([
    ['kind', ['drawing']],
    ['note', ['Revision C']],
  ])
  await rm(store.folder, { recursive: true })
})

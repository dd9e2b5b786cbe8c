import { expect, test } from 'vitest'
import { POST as receiveEvidence } from '@/app/programmes/[code]/items/[item]/evidence/route'
import { POST as receiveLotFile } from '@/app/programmes/[code]/lots/[lot]/file/route'

const fromElsewhere = () =>
  new Request('http://liquidus.example/x', { method: 'POST', headers: { accept: 'application/json' } })

/** A route handler gets the parts of its address decoded; to decode them again fails on a percent sign. */
test('a lot or an item with a percent sign in its name is answered like any other', async () => {
  const lot = await receiveLotFile(fromElsewhere(), {
    params: Promise.resolve({ code: 'LX-41', lot: 'FLUX 5%' }),
  })
  expect(lot.status).toBe(403)
  const item = await receiveEvidence(fromElsewhere(), {
    params: Promise.resolve({ code: 'LX-41', item: 'own%' }),
  })
  expect(item.status).toBe(403)
})

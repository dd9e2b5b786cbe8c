import { text } from 'node:stream/consumers'
import { prerenderToNodeStream } from 'react-dom/static'
import type { ReactElement } from 'react'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'

vi.mock('next/headers', async () => (await import('@/tests/commands/session-cookie')).REQUEST_HEADERS)

import { signInHere } from '@/tests/commands/session-cookie'
import { allocatedLot, VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, type World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'
import StorePage from '@/app/works/lots/page'
import WorksLotPage from '@/app/works/suppliers/[supplier]/lots/[lot]/page'
import SupplierPage from '@/app/works/suppliers/[supplier]/page'
import SuppliersPage from '@/app/works/suppliers/page'

let db: FreshInstallation
let world: World
let of: { supplier: string; lot: string }
beforeAll(async () => {
  db = await freshInstallation()
  world = await openWorld()
  of = await allocatedLot(world)
  const works = { kind: 'supplier' as const, code: of.supplier }
  await world.must('quality', 'test-lot', {
    ...(await VALID_INPUT['test-lot'](world, 'quality')),
    works,
    lot: of.lot,
  })
  await world.must('production', 'trace-lot', {
    programme: world.code,
    lot: of.lot,
    assemblies: ['SN-77'],
  })
  await world.must('quality', 'dispose-lot', { works, lot: of.lot, verdict: 'reject', reason: 'Slow.' })
})
afterAll(async () => {
  await db.drop()
})

const drawn = async (who: keyof World['person'], page: () => Promise<ReactElement>): Promise<string> => {
  await signInHere(world.person[who])
  return text((await prerenderToNodeStream(await page())).prelude)
}
const lotPage = () =>
  WorksLotPage({
    params: Promise.resolve(of),
    searchParams: Promise.resolve({ method: 'rotary-dip', by: 'hand' }),
  })

test('a rejected lot says in which programme and which assembly it is, to everybody of the works', async () => {
  const page = await drawn('design', lotPage)
  expect(page).toContain('SN-77')
  expect(page).toContain(world.code)
  expect(page).toContain('Rejected, and soldered into assemblies')
  expect(page).not.toContain('Record disposition')
})

test('quality has the forms to test, dispose of and correct it there; production those of the store', async () => {
  const quality = await drawn('quality', lotPage)
  for (const form of ['Record the test', 'Record disposition', 'Correct this lot', 'Withdraw the test'])
    expect(quality).toContain(form)
  const production = await drawn('production', lotPage)
  expect(production).toContain('Take back into the store')
  // A rejected lot goes to no programme.
  expect(production).not.toContain('Allocate pieces of the lot')
})

test('a supplier’s page has its lots, what was rejected with its bounds, and the form to receive', async () => {
  const page = await drawn('quality', () =>
    SupplierPage({ params: Promise.resolve({ supplier: of.supplier }) }),
  )
  expect(page).toContain(of.lot)
  // One of one: the exact lower 95 % bound is 0.025, by Clopper and Pearson 0.025 ** (1 / 1).
  expect(page).toContain('1 of 1 disposed of; 2.5 % to 100 % of lots')
  expect(page).toContain('Receive the lot')
})

test('the lists of suppliers and of the store hold it', async () => {
  expect(await drawn('stranger', SuppliersPage)).toContain(of.supplier)
  const store = await drawn('stranger', StorePage)
  expect(store).toContain(of.lot)
  expect(store).toContain(`${world.code}: 40`)
})

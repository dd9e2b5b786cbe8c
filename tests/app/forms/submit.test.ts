import { beforeEach, expect, test, vi } from 'vitest'

const { signedIn, perform } = vi.hoisted(() => ({ signedIn: vi.fn(), perform: vi.fn() }))
vi.mock('@/lib/auth/session', () => ({ signedIn }))
vi.mock('@/lib/commands/perform', () => ({ performUnparsed: perform }))

import { submit } from '@/app/forms/submit'

beforeEach(() => vi.resetAllMocks())

function filledIn(): FormData {
  const form = new FormData()
  form.set('comment', 'A long answer that took an hour.')
  form.set('password', 'never shown again')
  return form
}
const send = () =>
  submit(
    'accept-answer',
    filledIn(),
    () => ({}),
    () => '/',
  )

test('when the session has ended meanwhile, what was typed comes back, and nothing is performed', async () => {
  signedIn.mockResolvedValue(undefined)
  const state = await send()
  expect(state.message).toContain('Your session has ended')
  expect(state.typed).toEqual({ comment: 'A long answer that took an hour.' })
  expect(perform).not.toHaveBeenCalled()
})

test('a one-time password lets nobody decide anything: it is changed first', async () => {
  signedIn.mockResolvedValue({ personId: 'p', signedInAt: 0, mustChangePassword: true })
  const state = await send()
  expect(state.message).toContain('one-time password')
  expect(perform).not.toHaveBeenCalled()
})

test('what is refused comes back with what was typed', async () => {
  signedIn.mockResolvedValue({ personId: 'p', signedInAt: 0, mustChangePassword: false })
  perform.mockResolvedValue({ ok: false, message: 'No.', fields: { comment: 'Too long.' } })
  expect(await send()).toEqual({
    message: 'No.',
    fields: { comment: 'Too long.' },
    typed: { comment: 'A long answer that took an hour.' },
  })
})

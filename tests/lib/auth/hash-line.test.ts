import { afterEach, expect, test, vi } from 'vitest'
import { hashLine, LineIsFull, type Place } from '@/lib/auth/hash-line'

/** A line whose work ends when it is told to, and what of it runs. */
function watched(limits: Parameters<typeof hashLine>[0]) {
  const line = hashLine(limits)
  const running = new Map<string, () => void>()
  const began: string[] = []
  const enter = (name: string, place: Place): Promise<string> =>
    line(place, async () => {
      began.push(name)
      await new Promise<void>((end) => running.set(name, end))
      running.delete(name)
      return name
    })
  return { enter, running, began, end: (name: string) => running.get(name)?.() }
}

/** Lets everything go on that can. */
const settle = () => new Promise((resolve) => setImmediate(resolve))
const from = (origin: string): Place => ({ who: 'signing in', shareOf: origin })
const AT_WORK: Place = { who: 'signed in' }

test('no more than two run, a bounded number waits, and the next is refused at once', async () => {
  const { enter, running, end } = watched({
    atOnce: 2,
    maxWaiting: { 'signing in': 3, 'signed in': 3 },
    maxOfOne: 9,
  })
  const all = [1, 2, 3, 4, 5].map((count) => enter(`${count}`, from(`origin ${count}`)))
  await settle()
  expect([...running.keys()]).toEqual(['1', '2'])
  await expect(enter('6', from('origin 6'))).rejects.toBeInstanceOf(LineIsFull)
  for (const name of ['1', '2', '3', '4', '5']) {
    end(name)
    await settle()
    expect(running.size).toBeLessThanOrEqual(2)
  }
  expect(await Promise.all(all)).toEqual(['1', '2', '3', '4', '5'])
})

test('who signs has places of their own, and goes before everybody at the door', async () => {
  const { enter, began, end } = watched({
    atOnce: 1,
    maxWaiting: { 'signing in': 2, 'signed in': 2 },
    maxOfOne: 9,
  })
  const all = ['a', 'b', 'c'].map((name) => enter(name, from(name)))
  await settle()
  all.push(enter('signs', AT_WORK))
  for (const name of ['a', 'signs', 'b', 'c']) {
    end(name)
    await settle()
  }
  await Promise.all(all)
  expect(began).toEqual(['a', 'signs', 'b', 'c'])
})

test('one origin cannot fill the line, and gets its places back, after a failure too', async () => {
  const { enter, end } = watched({
    atOnce: 1,
    maxWaiting: { 'signing in': 9, 'signed in': 9 },
    maxOfOne: 2,
  })
  const two = ['a', 'b'].map((name) => enter(name, from('one')))
  await settle()
  await expect(enter('c', from('one'))).rejects.toBeInstanceOf(LineIsFull)
  const other = enter('d', from('another'))
  for (const name of ['a', 'b', 'd']) {
    end(name)
    await settle()
  }
  await Promise.all([...two, other])
  const line = hashLine({ atOnce: 1, maxWaiting: { 'signing in': 9, 'signed in': 9 }, maxOfOne: 1 })
  await expect(line(from('one'), () => Promise.reject(new Error('no database')))).rejects.toThrow(
    'no database',
  )
  expect(await line(from('one'), () => Promise.resolve('again'))).toBe('again')
})

afterEach(() => vi.resetModules())

test('two bundles of this module stand in one line, and each is refused in its own words', async () => {
  const one = await import('@/lib/auth/hash-line')
  vi.resetModules()
  const other = await import('@/lib/auth/hash-line')
  let end = () => {}
  const until = new Promise<void>((resolve) => (end = resolve))
  const held = Array.from({ length: 10 }, () => one.inHashLine(from('bundles'), () => until))
  await expect(other.inHashLine(from('bundles'), () => until)).rejects.toBeInstanceOf(other.LineIsFull)
  end()
  await Promise.all(held)
})

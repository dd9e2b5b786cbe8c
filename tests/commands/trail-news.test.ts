import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { AS_OF } from '@/lib/live/as-of'
import { eventStream } from '@/lib/live/event-stream'
import { hearTrailNews } from '@/lib/live/trail-news'
import { newsOf } from '@/lib/live/news-of'
import { trailsOfDesk, trailsOfTheWorks } from '@/lib/live/watched-trails'
import { trailsOfProgramme } from '@/lib/live/trails-of-programme'
import { judgedProgramme } from '@/lib/programme/judged'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

const specify = (value: number) =>
  world.as('design', 'revise-parameter', {
    programme: world.code,
    parameter: 'board-thickness',
    value,
    reason: 'As the drawing says.',
    seen: 0,
  })

test('an entry is heard of once it is committed, and a refused command is not', async () => {
  const programme = (await judgedProgramme(world.code))!
  const heard: (string | undefined)[] = []
  const hearing = hearTrailNews((trailId) => heard.push(trailId))
  await hearing.heard

  expect(await specify(-1)).toMatchObject({ ok: false })
  expect(await specify(1.6)).toMatchObject({ ok: true })
  await vi.waitFor(() => expect(heard).toEqual([programme.state.programme.id]))
  hearing.stop()

  const after = (await judgedProgramme(world.code))!
  expect(after.asOf).not.toBe(programme.asOf)
  expect(after.head.seq).toBe(programme.head.seq + 1)
})

test('a programme listens to its own trail and to those of the works that it rests on', async () => {
  const { id } = (await judgedProgramme(world.code))!.state.programme
  const trails = await trailsOfProgramme(id)
  expect(trails.has(id)).toBe(true)
  for (const trail of trails) expect(trail).toMatch(/^[0-9a-f-]{36}$/)
})

test('a desk listens to the programmes of its person and to what of the works these rest on, and to no other', async () => {
  const other = await openWorld()
  const [own, foreign] = [world, other].map(
    async ({ code }) => (await judgedProgramme(code))!.state.programme.id,
  )
  const desk = await trailsOfDesk(world.person.design)
  expect(desk.has(await own!)).toBe(true)
  expect(desk.has(await foreign!)).toBe(false)
  for (const trail of await trailsOfProgramme(await own!)) expect(desk.has(trail), trail).toBe(true)
  expect((await trailsOfDesk(world.person.stranger)).has(await own!)).toBe(false)

  const works = await trailsOfTheWorks()
  await other.must('design', 'revise-parameter', {
    programme: other.code,
    parameter: 'board-thickness',
    value: 1.6,
    reason: 'As the drawing says.',
    seen: 0,
  })
  expect((await trailsOfDesk(world.person.design)).mark).toBe(desk.mark)
  expect((await trailsOfTheWorks()).mark).not.toBe(works.mark)
  expect(await specify(1.7)).toMatchObject({ ok: false })
  expect((await trailsOfDesk(world.person.design)).mark).toBe(desk.mark)
  await world.must('design', 'revise-parameter', {
    programme: world.code,
    parameter: 'board-thickness',
    value: 2.4,
    reason: 'Thicker.',
    seen: 1,
  })
  expect((await trailsOfDesk(world.person.design)).mark).not.toBe(desk.mark)
})

test('what came between drawing and listening is told at once', async () => {
  const gone = new AbortController()
  const request = new Request(`http://localhost/live?${AS_OF}=before`, { signal: gone.signal })
  const answer = newsOf(request, {
    concerns: () => false,
    wouldBe: () => Promise.resolve('after'),
  })
  const reader = answer.body!.pipeThrough(new TextDecoderStream()).getReader()
  expect((await reader.read()).value).toBe('retry: 2000\n\n')
  expect((await reader.read()).value).toBe('data: changed\n\n')
  gone.abort()
})

test('a page hears of each change as an event, and nothing more once it has gone', async () => {
  const gone = new AbortController()
  let tell = (): void => undefined
  const stopped = vi.fn()
  const answer = eventStream(gone.signal, (send) => {
    tell = send
    return stopped
  })
  expect(answer.headers.get('content-type')).toBe('text/event-stream; charset=utf-8')
  const reader = answer.body!.pipeThrough(new TextDecoderStream()).getReader()
  expect((await reader.read()).value).toBe('retry: 2000\n\n')
  tell()
  expect((await reader.read()).value).toBe('data: changed\n\n')
  gone.abort()
  expect(stopped).toHaveBeenCalledOnce()
  expect(tell).not.toThrow()
})

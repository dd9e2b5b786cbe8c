import { expect, test } from 'vitest'
import type { Source } from '@/shared/sources/source'

const modules = import.meta.glob<Record<string, unknown>>(
  [
    '/shared/materials/*.ts',
    '/shared/physics/*.ts',
    '/shared/plan/limits/*.ts',
    '/shared/reliability/models/*.ts',
    '/shared/sampling/sampling-sources.ts',
    '/shared/statistics/run-rules/*.ts',
  ],
  { eager: true },
)

const isSource = (value: object): value is Source => 'cite' in value && 'how' in value

/** Every source that a table, a limit or a formula holds, wherever it lies in it. */
function sourcesIn(value: unknown, seen: Set<object>): Source[] {
  if (value === null || typeof value !== 'object' || seen.has(value)) return []
  seen.add(value)
  const below = Object.values(value).flatMap((one) => sourcesIn(one, seen))
  return isSource(value) ? [value, ...below] : below
}
const sources = sourcesIn(modules, new Set())
const published = [...new Set(sources.filter(({ how }) => how === 'published').map(({ cite }) => cite))]

test('there are sources to look at', () => {
  expect(sources.length).toBeGreaterThan(200)
  expect(published.length).toBeGreaterThan(50)
})

/** Words that send a reader nowhere: whose data sheet, which maker, an abstract of what, quoted by whom? */
const NOWHERE =
  /secondary cop|\babstracts?\b|as makers|maker publishes|a component maker|a board maker|^data sheets|as quoted in \d|statistics texts|transcriptions/i

test.each(published)('can be followed: %s', (cite) => {
  expect(cite).not.toMatch(NOWHERE)
  // A standard's number, a year, a page, a table: something to look it up by.
  expect(cite).toMatch(/\d/)
})

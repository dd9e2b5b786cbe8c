import fc from 'fast-check'
import { storableInput } from '@/lib/commands/storable-input'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { judgedProgramme } from '@/lib/programme/judged'
import { revisionPreview } from '@/shared/gate/revision-preview'
import { ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { Parameter } from '@/shared/plan/parameter'
import { valueDifference } from '@/shared/plan/value-difference'
import { openWorld, type World } from '@/tests/commands/world'
import { anyValue } from '@/tests/laws/any-value'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

/** Two values that the parameter accepts, unlike each other where it has room for two. */
function twoValues(parameter: Parameter): readonly [unknown, unknown] {
  const accepted = anyValue(parameter).filter((value) => parameter.schema.safeParse(value).success)
  const [one, ...others] = fc.sample(accepted, { numRuns: 20, seed: 1 })
  const other = others.find((value) => JSON.stringify(value) !== JSON.stringify(one))
  return [one, other ?? one]
}

async function save(parameter: Parameter, value: unknown): Promise<void> {
  const { id } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
  const seen = await database().revision.count({ where: { programmeId: id, parameter: parameter.key } })
  await world.must('lead', 'revise-parameter', {
    programme: world.code,
    parameter: parameter.key,
    value: JSON.parse(JSON.stringify(value)) as JsonValue,
    seen,
    reason: 'Tried.',
  })
}

test('a value that was saved is the value it has, and another is not, for every parameter there is', async () => {
  for (const parameter of ALL_PARAMETERS) {
    const [value, other] = twoValues(parameter).map(storableInput)
    const before = (await judgedProgramme(world.code))?.state.facts.values.get(parameter.key)
    if (JSON.stringify(before) !== JSON.stringify(value)) await save(parameter, value)
    const judged = await judgedProgramme(world.code)
    if (!judged) throw new Error('The programme is gone.')
    const preview = (typed: unknown) => revisionPreview(judged.state, judged.judgement, parameter.key, typed)
    expect(preview(value), parameter.key).toMatchObject({ message: expect.stringMatching(/has already/) })
    const stored = judged.state.facts.values.get(parameter.key)
    expect(valueDifference(parameter, stored, value), parameter.key).toEqual([])
    if (other !== value) expect(preview(other), parameter.key).toHaveProperty('preview')
  }
}, 180_000)

test('a table that reaches the database comes back in another order of members', async () => {
  const rows = await database().revision.findMany({ where: { programme: { code: world.code } } })
  const reordered = rows.filter(({ parameter, value }) => {
    const shape = ALL_PARAMETERS.find(({ key }) => key === parameter)?.shape
    if (shape?.kind !== 'table' || !Array.isArray(value)) return false
    const declared = Object.keys(shape.columns)
    const held = Object.keys(value[0] as object)
    return held.join() !== declared.filter((column) => held.includes(column)).join()
  })
  expect(reordered.length).toBeGreaterThan(5)
})

test('what cannot be read is answered by field', async () => {
  const judged = await judgedProgramme(world.code)
  if (!judged) throw new Error('The programme is gone.')
  expect(revisionPreview(judged.state, judged.judgement, 'service-years', 'long')).toMatchObject({
    message: expect.any(String),
    fields: { value: expect.any(String) },
  })
})

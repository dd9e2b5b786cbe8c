import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { inputFromForm, within } from '@/app/forms/input-from-form'
import { WORKS_FIELDS } from '@/app/forms/works-in-form'
import { commandNamed } from '@/lib/commands/all-commands'
import { COMMAND_NAMES, type CommandName } from '@/shared/commands/all-faces'
import { anyAccepted } from '@/tests/laws/any-accepted'

/** A form as a browser sends it: a box each, in order; what is left out was not ticked, or is not on the page. */
function formOf(fields: Readonly<Record<string, string>>): FormData {
  const form = new FormData()
  for (const [name, value] of Object.entries(fields)) form.append(name, value)
  return form
}
const read = (schema: z.ZodType, fields: Readonly<Record<string, string>>, name = 'box') =>
  inputFromForm(schema, formOf(fields), name)

describe('a number', () => {
  test.each([
    ['1.35', 1.35],
    [' −0.5 ', -0.5],
    ['-3', -3],
    ['1 200', 1200],
    ['12\u202f500', 12_500],
    ['', undefined],
    ['1,35', '1,35'],
    ['twelve', 'twelve'],
    ['0x10', '0x10'],
    ['1e3', 1000],
  ])('typed %j is %j', (typed, value) => expect(read(z.number(), { box: typed })).toBe(value))
  test('left empty is null where the schema takes that, and undefined where it has a default', () => {
    expect(read(z.number().nullable(), { box: ' ' })).toBeNull()
    expect(read(z.number().default(3), { box: '' })).toBeUndefined()
  })
})

describe('a yes or no', () => {
  test.each([
    [{ box: 'yes' }, true],
    [{ box: 'on' }, true],
    [{ box: 'no' }, false],
  ])('%j is %j', (fields, value) => expect(read(z.boolean(), fields)).toBe(value))
  test('that was not chosen is undefined, and never a no', () => {
    expect(read(z.boolean(), {})).toBeUndefined()
    expect(read(z.boolean(), { box: '' })).toBeUndefined()
    expect(read(z.boolean(), { box: 'maybe' })).toBe('maybe')
  })
})

test('a text is trimmed; nothing typed is an empty one, so that the schema says what to fill in', () => {
  expect(read(z.string().min(1), { box: '  two words \n' })).toBe('two words')
  expect(read(z.string().min(1), {})).toBe('')
  expect(read(z.enum(['a', 'b']), { box: 'a' })).toBe('a')
})

test('a part of parts is read by dotted names, and nothing beyond what its schema names', () => {
  const schema = z.strictObject({ title: z.string(), owner: z.strictObject({ name: z.string() }) })
  expect(read(schema, { 'box.title': 'T', 'box.owner.name': 'N', 'box.key': 'x', $ACTION_1: 'y' })).toEqual({
    title: 'T',
    owner: { name: 'N' },
  })
})

test('a list of parts closes the gaps of rows that were taken out', () => {
  const schema = z.array(z.strictObject({ name: z.string(), count: z.number() }))
  const fields = { 'box.3.name': 'C', 'box.3.count': '3', 'box.10.name': 'K', 'box.10.count': 'many' }
  expect(read(schema, fields)).toEqual([
    { name: 'C', count: 3 },
    { name: 'K', count: 'many' },
  ])
  expect(read(schema, {})).toEqual([])
})

test('a list of single values is a box ticked for each', () => {
  expect(read(z.array(z.enum(['design', 'quality'])), { 'box.quality': 'on', other: 'on' })).toEqual([
    'quality',
  ])
  expect(read(z.array(z.number()), { 'box.12': 'on', 'box.7': '' })).toEqual([12])
})

test('a record is a box for each of its keys', () => {
  expect(read(z.record(z.string(), z.number()), { 'box.board-thickness': '2', 'box.a.b': '0' })).toEqual({
    'board-thickness': 2,
    'a.b': 0,
  })
})

test('of several forms, the one whose kind is chosen, or whose box is on the page', () => {
  const chosen = z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('item'), title: z.string() }),
    z.strictObject({ kind: z.literal('limit'), value: z.number() }),
  ])
  expect(read(chosen, { 'box.kind': 'limit', 'box.value': '−2' })).toEqual({ kind: 'limit', value: -2 })
  expect(read(chosen, { 'box.kind': 'neither' })).toMatchObject({ kind: 'neither' })
  const present = z.union([z.strictObject({ sha256: z.string() }), z.strictObject({ url: z.string() })])
  expect(read(present, { 'box.url': 'https://example.invalid' })).toEqual({ url: 'https://example.invalid' })
})

test('what no box can stand for is a fault of the form, not of who fills it in', () => {
  expect(() => read(z.json(), { box: '1' })).toThrow(TypeError)
  expect(() => read(z.union([z.number(), z.string()]), { box: '1' })).toThrow(TypeError)
})

/** Parts that no form asks for box by box: each form reads them in a way of its own, or the server makes them. */
const OWN_PARTS: Partial<Record<CommandName, readonly string[]>> = {
  'add-alternative': ['alternative'],
  'add-person': ['passwordHash'],
  'add-readings': ['readings', 'mapping'],
  'add-record': ['rows'],
  'adopt-from-board': ['values'],
  'answer-action': ['amounts'],
  'approve-items': ['items'],
  'change-alternative': ['alternative'],
  'change-own-password': ['passwordHash'],
  'change-person': ['worksDepartment'],
  'correct-lot': ['values'],
  'correct-lot-test': ['values', 'conditions'],
  'correct-record': ['values'],
  'create-machine-token': ['tokenHash'],
  'open-option-study': ['alternatives'],
  'prefer-value': ['value'],
  'propose-change': ['change'],
  'reset-password': ['passwordHash'],
  'revise-parameter': ['value'],
  'test-lot': ['conditions', 'readings'],
  'trace-lot': ['assemblies'],
}

/** How a person would fill in the form: every value in its box, "no" in words, nothing where there is none. */
function boxesFor(value: unknown, name: string): [string, string][] {
  if (value === null || value === undefined) return [[name, '']]
  if (typeof value === 'boolean') return [[name, value ? 'yes' : 'no']]
  if (Array.isArray(value))
    return value.flatMap((entry, position) =>
      typeof entry === 'object' && entry !== null
        ? boxesFor(entry, within(name, position))
        : [[within(name, String(entry)), 'on'] as [string, string]],
    )
  if (typeof value === 'object')
    return Object.entries(value).flatMap(([key, entry]) => boxesFor(entry, within(name, key)))
  return [[name, typeof value === 'number' ? String(value).replace('-', '−') : String(value)]]
}

/** A box left empty says as little as one that is not there: where both are accepted, they are one. */
const withoutBlanks = (kept: unknown): unknown =>
  JSON.parse(JSON.stringify({ kept }, (_key, value: unknown) => (value === '' ? undefined : value)))

describe('law: what a command accepts comes back through its form', () => {
  test.each(COMMAND_NAMES)('%s', (command) => {
    const { shape } = commandNamed(command).input as z.ZodObject
    const asked = Object.entries(shape).filter(([part]) => !OWN_PARTS[command]?.includes(part))
    for (const [part, schema] of asked) {
      fc.assert(
        fc.property(anyAccepted(schema), (value) => {
          const form = new FormData()
          for (const [name, typed] of boxesFor(value, part)) form.append(name, typed)
          const kept = (input: unknown) => withoutBlanks((schema as z.ZodType).parse(input))
          expect(kept(inputFromForm(schema, form, part))).toEqual(kept(value))
        }),
        { numRuns: 60 },
      )
    }
    expect(asked.length + (OWN_PARTS[command]?.length ?? 0)).toBe(Object.keys(shape).length)
  })
})

test('the fields that say how boxes are written are no part of what any command takes', () => {
  const named = Object.values(WORKS_FIELDS).map((name) => name.split('.')[0])
  for (const command of COMMAND_NAMES) {
    const { shape } = commandNamed(command).input as z.ZodObject
    expect(
      Object.keys(shape).filter((part) => named.includes(part)),
      command,
    ).toEqual([])
  }
})

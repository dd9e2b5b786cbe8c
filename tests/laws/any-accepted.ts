import fc from 'fast-check'
import type { z } from 'zod'
import { dateOf } from '@/shared/quantity/calendar'

/**
 * Anything that a schema of ours accepts, before it is parsed. Only kinds of
 * schema that inputs and entries are made of; another one is a TypeError.
 */
export function anyAccepted(schema: z.core.$ZodType): fc.Arbitrary<unknown> {
  return anyOf(schema).filter((value) => (schema as z.ZodType).safeParse(value).success)
}

function anyOf(schema: z.core.$ZodType): fc.Arbitrary<unknown> {
  const { def } = (schema as z.core.$ZodTypes)._zod
  // The library's kinds of schema are not ours to list: one that is not read here is a TypeError below.
  // eslint-disable-next-line @typescript-eslint/switch-exhaustiveness-check
  switch (def.type) {
    case 'string':
      return anyText(schema as z.core.$ZodString)
    case 'number':
      return anyNumber(schema as z.core.$ZodNumber)
    case 'boolean':
      return fc.boolean()
    case 'null':
      return fc.constant(null)
    case 'enum':
      return fc.constantFrom(...Object.values(def.entries))
    case 'literal':
      return fc.constantFrom(...def.values)
    case 'object':
      return fc.record(Object.fromEntries(Object.entries(def.shape).map(([key, part]) => [key, anyOf(part)])))
    case 'array':
      return fc.uniqueArray(anyOf(def.element), { maxLength: 3, selector: (value) => JSON.stringify(value) })
    case 'record':
      return fc.dictionary(anyKey(def.keyType), anyOf(def.valueType), {
        maxKeys: 3,
        noNullPrototype: true,
      })
    case 'union':
      return fc.oneof(...def.options.map(anyOf))
    case 'nullable':
      return fc.option(anyOf(def.innerType), { nil: null })
    case 'optional':
    case 'default':
      return fc.option(anyOf(def.innerType), { nil: undefined })
    case 'pipe':
      return anyOf(def.out._zod.def.type === 'transform' ? def.in : def.out)
    case 'unknown':
    case 'custom':
      return fc.jsonValue({ maxDepth: 2 })
    default:
      throw new TypeError(`No values are made up for a schema of type ${def.type}.`)
  }
}

/** Keys of a record: of a closed list where it names one. */
function anyKey({ _zod }: z.core.$ZodType): fc.Arbitrary<string> {
  const { def } = _zod as z.core.$ZodTypes['_zod']
  return def.type === 'enum'
    ? fc.constantFrom(...Object.values(def.entries).map(String))
    : fc.stringMatching(/^[a-z]{1,8}(-[a-z]{1,8})?$/)
}

const DAY = /^\d{4}-\d{2}-\d{2}$/
const [FIRST, LAST] = [new Date('1900-01-01'), new Date('2199-12-31')]

const FORMATS: Readonly<Record<string, () => fc.Arbitrary<string>>> = {
  uuid: () => fc.uuid(),
  url: () => fc.webUrl(),
  email: () => fc.emailAddress(),
}

function anyText({ _zod: { def } }: z.core.$ZodString): fc.Arbitrary<string> {
  const checks = checksOf(def)
  const format = 'format' in def ? FORMATS[String(def.format)] : undefined
  const pattern = checks.find(({ check }) => check === 'string_format')?.pattern
  if (format) return format()
  // Of all texts of a date's form few are days that a record can bear.
  if (pattern?.source === DAY.source)
    return fc.date({ min: FIRST, max: LAST, noInvalidDate: true }).map(dateOf)
  if (pattern) return fc.stringMatching(pattern)
  const minLength = checks.find(({ check }) => check === 'min_length')?.minimum ?? 0
  const longest = checks.find(({ check }) => check === 'max_length')?.maximum ?? 40
  const text = (maxLength: number, unit: 'binary' | 'grapheme-ascii') =>
    fc.string({ unit, minLength, maxLength: Math.min(longest, maxLength) })
  return fc.oneof(text(40, 'binary'), text(12, 'grapheme-ascii'))
}

function anyNumber({ _zod: { def } }: z.core.$ZodNumber): fc.Arbitrary<number> {
  const checks = checksOf(def)
  const min = checks.find(({ check }) => check === 'greater_than')?.value ?? -1e9
  const max = checks.find(({ check }) => check === 'less_than')?.value ?? 1e9
  const inside = checks.some(({ check }) => check === 'number_format')
    ? fc.integer({ min, max })
    : fc.double({ min, max, noNaN: true })
  // Minus zero has no text of its own that reads back as it; the door keeps it as zero.
  return fc.oneof(inside, fc.constantFrom(min, max)).map((value) => (value === 0 ? 0 : value))
}

interface Check {
  readonly check: string
  readonly minimum?: number
  readonly maximum?: number
  readonly value?: number
  readonly pattern?: RegExp
}
const checksOf = ({ checks = [] }: z.core.$ZodTypeDef): readonly Check[] =>
  checks.map(({ _zod }) => _zod.def as Check)

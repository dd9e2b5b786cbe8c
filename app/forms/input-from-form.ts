import type { z } from 'zod'
import { numberTyped, text } from '@/app/forms/typed-text'

/**
 * A command's input out of a form, read by the input's own schema. A box is
 * named for its place in the input: `item.title`, `inspections.0.assembly`.
 * What cannot be read stays the text it is, so that the schema's own sentence
 * says so at the box; nothing typed or chosen is undefined, or null where the
 * schema takes that, and never a no.
 *
 * text and choices: trimmed, '' where nothing was typed.
 * numbers: with "-" or "−", digits parted by spaces or not.
 * yes or no: "yes", or a tick; "no".
 * lists of parts: by position, gaps closed; lists of single values: a box ticked for each, `approvers.design`.
 * records: a box for each key, `seen.board-thickness`.
 *
 * Throws a TypeError for a schema that no box can stand for (any JSON, say):
 * whoever makes the form reads that part themselves.
 */
export function inputFromForm(schema: z.core.$ZodType, form: FormData, name: string): unknown {
  const { def } = (schema as z.core.$ZodTypes)._zod
  // The library's kinds of schema are not ours to list: one that is not read here is a TypeError below.
  // eslint-disable-next-line @typescript-eslint/switch-exhaustiveness-check
  switch (def.type) {
    case 'string':
    case 'enum':
      return text(form, name)
    case 'literal':
      return def.values.find((value) => String(value) === text(form, name)) ?? text(form, name)
    case 'number':
      return numberTyped(form, name)
    case 'boolean':
      return yesOrNo(form, name)
    case 'object':
      return Object.fromEntries(
        Object.entries(def.shape).map(([key, part]) => [key, inputFromForm(part, form, within(name, key))]),
      )
    case 'array':
      return listFromForm(def.element, form, name)
    case 'record':
      return Object.fromEntries(
        keysBeneath(form, name).map((key) => [key, inputFromForm(def.valueType, form, within(name, key))]),
      )
    case 'union':
      return inputFromForm(optionMeant(def, form, name), form, name)
    case 'nullable':
      return isBlank(form, name) ? null : inputFromForm(def.innerType, form, name)
    case 'optional':
    case 'default':
    case 'prefault':
      return isBlank(form, name) ? undefined : inputFromForm(def.innerType, form, name)
    case 'readonly':
    case 'nonoptional':
      return inputFromForm(def.innerType, form, name)
    case 'pipe':
      return inputFromForm(def.in, form, name)
    default:
      throw new TypeError(`No box of a form stands for ${name}, which is of type ${def.type}.`)
  }
}

export const within = (name: string, key: string | number): string => (name ? `${name}.${key}` : String(key))

function listFromForm(element: z.core.$ZodType, form: FormData, name: string): unknown[] {
  const keys = keysBeneath(form, name)
  if (!isObject(element))
    return keys
      .filter((key) => !isBlank(form, within(name, key)))
      .map((key) => {
        const one = new FormData()
        one.set(name, key)
        return inputFromForm(element, one, name)
      })
  const positions = keys
    .map((key) => Number(key.split('.')[0]))
    .filter((position) => Number.isInteger(position))
  return [...new Set(positions)]
    .sort((a, b) => a - b)
    .map((position) => inputFromForm(element, form, within(name, position)))
}

/** Of several forms a part may have: the one whose kind is chosen, or the first that has a box in the form. */
function optionMeant(def: z.core.$ZodUnionDef, form: FormData, name: string): z.core.$ZodType {
  const objects = def.options.filter(isObject)
  if (objects.length < def.options.length)
    throw new TypeError(`No box of a form stands for ${name}, which may be of several types.`)
  const by = (def as Partial<z.core.$ZodDiscriminatedUnionDef>).discriminator
  const meant = objects.find((option) => {
    const { shape } = option._zod.def
    if (by === undefined) return Object.keys(shape).some((key) => keysBeneath(form, name).includes(key))
    const chosen = text(form, within(name, by))
    return shape[by] !== undefined && inputIsOf(shape[by], chosen)
  })
  const [first] = objects
  if (!first) throw new TypeError(`${name} is of no type at all.`)
  return meant ?? first
}

const inputIsOf = (schema: z.core.$ZodType, value: string): boolean => schema._zod.values?.has(value) ?? false

const isObject = (schema: z.core.$ZodType): schema is z.core.$ZodObject =>
  (schema as z.core.$ZodTypes)._zod.def.type === 'object'

/** What follows a name in the names of the boxes beneath it, in the order of the form, each once. */
const keysBeneath = (form: FormData, name: string): string[] => [
  ...new Set(
    [...form.keys()].filter((box) => box.startsWith(`${name}.`)).map((box) => box.slice(name.length + 1)),
  ),
]

/** Nothing was typed or chosen in the box of that name, nor in one beneath it. */
const isBlank = (form: FormData, name: string): boolean =>
  [...form].every(
    ([box, typed]) =>
      (box !== name && !box.startsWith(`${name}.`)) || (typeof typed === 'string' && !typed.trim()),
  )

function yesOrNo(form: FormData, name: string): boolean | string | undefined {
  const typed = text(form, name)
  if (typed === 'yes' || typed === 'on') return true
  return typed === 'no' ? false : typed || undefined
}

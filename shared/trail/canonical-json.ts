/** What JSON can hold. Absent members and `undefined` cannot be written and are refused. */
export type JsonValue =
  null | boolean | number | string | readonly JsonValue[] | { readonly [member: string]: JsonValue }

/** Deeper nesting than any record needs; it also ends the walk round a value that contains itself. */
const DEEPEST_NESTING = 200

const LONE_SURROGATE = /\p{Surrogate}/u

/** True when every surrogate in the text has its partner, so that the text has a UTF-8 form. */
export const isWellFormedText = (text: string): boolean => !LONE_SURROGATE.test(text)

/**
 * The canonical JSON text of a value: no white space, members sorted by the
 * UTF-16 code units of their names, numbers and strings as ECMAScript writes them.
 *
 * Refuses with a RangeError what has no single JSON form: NaN and the infinities,
 * minus zero, lone surrogates, undefined, anything that is not plain data, and
 * nesting beyond 200 levels.
 *
 * Source: RFC 8785 (JSON Canonicalization Scheme), sections 3.2.2 and 3.2.3.
 * Its Appendix B writes minus zero as "0"; we refuse it instead, because the
 * text read back would be a different number, so both readings of the rule agree here.
 */
export const canonicalJson = (value: JsonValue): string => textOf(value, '$', 0)

function textOf(value: unknown, place: string, depth: number): string {
  if (value === null || value === true || value === false) return String(value)
  if (typeof value === 'string') return textOfString(value, place)
  if (typeof value === 'number') return textOfNumber(value, place)
  if (typeof value !== 'object') {
    throw new RangeError(
      `The value at ${place} is ${typeof value}, which JSON cannot hold. Leave it out or use null.`,
    )
  }
  if (depth >= DEEPEST_NESTING) {
    throw new RangeError(`The value is nested more than ${DEEPEST_NESTING} deep, or contains itself.`)
  }
  return Array.isArray(value) ? textOfList(value, place, depth) : textOfObject(value, place, depth)
}

function textOfString(text: string, place: string): string {
  if (!isWellFormedText(text)) {
    throw new RangeError(
      `The text at ${place} holds half of a character pair (a lone surrogate). Enter it again.`,
    )
  }
  return JSON.stringify(text)
}

function textOfNumber(number: number, place: string): string {
  if (!Number.isFinite(number)) {
    throw new RangeError(`The number at ${place} is ${number}; only a finite number can be recorded.`)
  }
  if (Object.is(number, -0)) throw new RangeError(`The number at ${place} is minus zero; record 0 instead.`)
  return String(number)
}

function textOfList(list: readonly unknown[], place: string, depth: number): string {
  const parts: string[] = []
  for (let index = 0; index < list.length; index++) {
    parts.push(textOf(list[index], `${place}[${index}]`, depth + 1))
  }
  return `[${parts.join(',')}]`
}

function textOfObject(object: object, place: string, depth: number): string {
  const prototype: unknown = Object.getPrototypeOf(object)
  if (prototype !== Object.prototype && prototype !== null) {
    throw new RangeError(
      `The value at ${place} is not plain data. Turn it into text, numbers, lists or objects first.`,
    )
  }
  // The default sort compares UTF-16 code units, as RFC 8785 asks; a locale's order would not do.
  const parts = Object.keys(object)
    .sort()
    .map((name) => {
      const memberPlace = `${place}.${name}`
      return `${textOfString(name, memberPlace)}:${textOf((object as Record<string, unknown>)[name], memberPlace, depth + 1)}`
    })
  return `{${parts.join(',')}}`
}

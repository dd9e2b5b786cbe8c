import { LRUCache } from 'lru-cache'

/**
 * A memory of costly pure results: the newest few for each subject, for as long
 * as the subject is. A result is found again when every input is the same by
 * identity, since the facts keep an unchanged part's identity.
 */
export function memory<S extends object, R>(keep: number) {
  const known = new WeakMap<S, { readonly inputs: readonly unknown[]; readonly result: R }[]>()
  return (subject: S, inputs: readonly unknown[], compute: () => R): R => {
    const results = known.get(subject) ?? []
    if (results.length === 0) known.set(subject, results)
    const found = results.find((one) => one.inputs.every((input, at) => Object.is(input, inputs[at])))
    if (found) return found.result
    const result = compute()
    results.unshift({ inputs, result })
    results.length = Math.min(results.length, keep)
    return result
  }
}

/** A costly pure function that remembers so; its first argument is the subject. */
export function memo<S extends object, I extends readonly unknown[], R>(
  compute: (subject: S, ...inputs: I) => R,
  keep = 24,
): (subject: S, ...inputs: I) => R {
  const recall = memory<S, R>(keep)
  return (subject, ...inputs) => recall(subject, inputs, () => compute(subject, ...inputs))
}

/** A costly pure function of plain values that remembers as many results, by a text that names the arguments. */
export function memoByText<I extends readonly unknown[], R extends NonNullable<unknown>>(
  keep: number,
  textOf: (...inputs: I) => string,
  compute: (...inputs: I) => R,
): (...inputs: I) => R {
  const known = new LRUCache<string, R>({ max: keep })
  return (...inputs) => {
    const text = textOf(...inputs)
    const result = known.get(text) ?? compute(...inputs)
    known.set(text, result)
    return result
  }
}

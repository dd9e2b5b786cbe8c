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

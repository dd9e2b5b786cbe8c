interface NamedLot {
  readonly id: string
  readonly code: string
  /** The supplier it was received from, or the programme it was recorded in before the works kept lots. */
  readonly recordedIn: { readonly kind: string; readonly code: string }
}

/**
 * What lots are called where those of several trails stand beside each other, by id. A lot has its code; one of another
 * programme, and one whose code a lot before it has already, is told apart by where it is recorded. The order therefore
 * has to be one that only grows at its end.
 */
export function lotNames(lots: readonly NamedLot[], programme?: string): ReadonlyMap<string, string> {
  const taken = new Set<string>()
  return new Map(
    lots.map(({ id, code, recordedIn }) => {
      const elsewhere = recordedIn.kind === 'programme' && recordedIn.code !== programme
      const name = elsewhere || taken.has(code.toLowerCase()) ? `${code} · ${recordedIn.code}` : code
      taken.add(name.toLowerCase())
      return [id, name]
    }),
  )
}

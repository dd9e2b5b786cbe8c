/** The options of a choice, from a table keyed by value whose rows bear a label. */
export const optionsOf = <K extends string>(
  table: Readonly<Record<K, { readonly label: string }>>,
): { value: K; label: string }[] =>
  (Object.keys(table) as K[]).map((value) => ({ value, label: table[value].label }))

/** One defect as it stands in its boxes. */
export interface DefectTyped {
  readonly joint: string
  readonly kind: string
  readonly xMm: string
  readonly yMm: string
  readonly note: string
}

export const DEFECTS = 'inspections.0.defects'
export const BLANK: DefectTyped = { joint: '', kind: '', xMm: '', yMm: '', note: '' }

/** The boxes of a defect, in the order they are filled in. */
export const FIELDS = [
  { field: 'joint', label: 'Joint', placeholder: 'T1-3', maxLength: 40 },
  { field: 'kind', label: 'Kind', list: 'defect-kinds' },
  { field: 'xMm', label: 'Across, mm', inputMode: 'decimal' },
  { field: 'yMm', label: 'Up, mm', inputMode: 'decimal' },
  { field: 'note', label: 'Note', maxLength: 300 },
] as const satisfies readonly ({ field: keyof DefectTyped; label: string } & Record<string, unknown>)[]

export const isBlank = (row: DefectTyped): boolean => Object.values(row).every((text) => text.trim() === '')

/** The rows of a form that came back, in order, blank ones left out. */
export function rowsTyped(typed: Readonly<Record<string, string>>): DefectTyped[] {
  const positions = Object.keys(typed)
    .filter((name) => name.startsWith(`${DEFECTS}.`))
    .map((name) => Number(name.slice(DEFECTS.length + 1).split('.')[0]))
    .filter((position) => Number.isInteger(position))
  return [...new Set(positions)]
    .sort((a, b) => a - b)
    .map((position) => {
      const box = (field: keyof DefectTyped) => typed[`${DEFECTS}.${position}.${field}`] ?? ''
      return { joint: box('joint'), kind: box('kind'), xMm: box('xMm'), yMm: box('yMm'), note: box('note') }
    })
    .filter((row) => !isBlank(row))
}

/** A cell of a workbook: numbers stay numbers, dates and times are text in the forms of ISO 8601, an empty cell is ''. */
export type WorkbookCell = string | number

/** What the thread that reads a workbook answers. */
export type WorkbookAnswer =
  | { readonly kind: 'read'; readonly rows: readonly (readonly WorkbookCell[])[] }
  | { readonly kind: 'refused'; readonly sentence: string }

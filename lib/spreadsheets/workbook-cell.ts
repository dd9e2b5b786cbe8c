/** A cell of a workbook: numbers stay numbers, dates and times are text in the forms of ISO 8601, an empty cell is ''. */
export type WorkbookCell = string | number

import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { LOT_KINDS } from '@/shared/methods/lot-kind'

/* What can be corrected of the things that have a page of their own; a record's kind and a test's method bring theirs. */

/** What was noted when a lot was received. Its code stays: other records name the lot by it. */
export const LOT_COLUMNS = {
  kind: choiceColumn({ label: 'Kind', options: LOT_KINDS.map((value) => ({ value, label: value })) }),
  part: textColumn({ label: 'What it is', maxLength: 120 }),
  supplier: textColumn({ label: 'Supplier', maxLength: 120 }),
  dateCode: optionalColumn(textColumn({ label: 'Date code', maxLength: 40 })),
  quantity: numberColumn({ label: 'Quantity', unit: 'pieces', min: 1, max: 100_000_000, whole: true }),
  receivedOn: dateColumn({ label: 'Received on' }),
  expiresOn: optionalColumn(dateColumn({ label: 'To be used by', mayLieAhead: true })),
  temperatureC: numberColumn({ label: 'Store temperature', unit: '°C', min: -60, max: 150 }),
  relativeHumidityPct: numberColumn({ label: 'Store humidity', unit: '% RH', min: 0, max: 100 }),
  packing: textColumn({ label: 'Packing', maxLength: 120 }),
  supplierResult: optionalColumn(textColumn({ label: 'Supplier’s own result', maxLength: 1000 })),
}

/** When and by whom a lot was tested; with what, and under which conditions, stand beside it. */
export const LOT_TEST_COLUMNS = {
  testedOn: dateColumn({ label: 'Tested on' }),
  testedBy: textColumn({ label: 'Tested by', maxLength: 80 }),
}

/** How an assembly was looked at, and how much of it; its defects are a list of their own. */
export const INSPECTION_COLUMNS = {
  assembly: textColumn({ label: 'Assembly', maxLength: 40 }),
  inspectedOn: dateColumn({ label: 'Inspected on' }),
  inspector: textColumn({ label: 'Inspector', maxLength: 80 }),
  magnification: numberColumn({ label: 'Magnification', unit: '×', min: 1, max: 100 }),
  jointsSeen: numberColumn({ label: 'Joints inspected', unit: 'joints', min: 1, max: 100_000, whole: true }),
  note: optionalColumn(textColumn({ label: 'Note', maxLength: 1000 })),
}

import { readInThread, type ThreadLimits } from '@/lib/threads/read-in-thread'
import type { DecimalSign } from '@/shared/quantity/notation'
import { decimalText } from '@/shared/quantity/decimal-typed'
import type { WorkbookCell } from './workbook-cell'

const LIMITS: ThreadLimits = { milliseconds: 60_000, heapMiB: 512 }

/** Whether a file is an archive, as every workbook is. */
export const isArchive = (start: Uint8Array): boolean => start[0] === 0x50 && start[1] === 0x4b

/** The first sheet's rows, read in a thread of its own. Errors: Refused, where the file is no workbook, or takes too long or too much. */
export const workbookRows = (workbook: Uint8Array): Promise<readonly (readonly WorkbookCell[])[]> =>
  readInThread({
    program: ['spreadsheets', 'workbook-thread.mjs'],
    given: workbook,
    limits: LIMITS,
    refusals: {
      late: `The workbook was not read within ${LIMITS.milliseconds / 1000} s. Send it as CSV.`,
      tooMuch: `Reading the workbook takes more than ${LIMITS.heapMiB} MiB of memory. Send it as CSV.`,
    },
  })

/** A workbook's rows as lines of cells parted by tabs, a line for a row, its numbers with this decimal sign. */
export async function workbookAsText(workbook: Uint8Array, decimal: DecimalSign): Promise<Buffer> {
  const rows = await workbookRows(workbook)
  const lines = rows.map((row) =>
    row
      .map((cell) => (typeof cell === 'number' ? decimalText(cell, decimal) : quotedIfNeeded(cell)))
      .join('\t'),
  )
  return Buffer.from(`${lines.join('\n')}\n`)
}

const quotedIfNeeded = (cell: string): string =>
  /["\t]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell

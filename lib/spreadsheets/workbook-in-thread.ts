import { join } from 'node:path'
import { Worker, type WorkerOptions } from 'node:worker_threads'
import type { DecimalSign } from '@/shared/quantity/notation'
import { decimalText } from '@/shared/quantity/decimal-typed'
import { Refused } from '@/shared/refused'
import type { WorkbookAnswer, WorkbookCell } from './workbook-cell'

/** However hostile a workbook is, its reading ends here, and takes no more memory than this. */
const LIMITS = { milliseconds: 60_000, heapMiB: 512 } as const

/** Whether a file is an archive, as every workbook is. */
export const isArchive = (start: Uint8Array): boolean => start[0] === 0x50 && start[1] === 0x4b

/**
 * The first sheet's rows, read in a thread of its own, so that whoever else asks for a page meanwhile gets it as soon
 * as ever. Errors: Refused, where the file is no workbook, or its reading takes too long or too much.
 */
export function workbookRows(workbook: Uint8Array): Promise<readonly (readonly WorkbookCell[])[]> {
  return new Promise((resolve, reject) => {
    const worker = startThread({
      workerData: workbook,
      resourceLimits: { maxOldGenerationSizeMb: LIMITS.heapMiB },
    })
    const late = setTimeout(() => {
      void worker.terminate()
      reject(new Refused(`The workbook was not read within ${LIMITS.milliseconds / 1000} s. Send it as CSV.`))
    }, LIMITS.milliseconds)
    worker.once('message', (answer: WorkbookAnswer) => {
      if (answer.kind === 'read') resolve(answer.rows)
      else reject(new Refused(answer.sentence))
    })
    worker.once('error', (error) =>
      reject(
        'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY'
          ? new Refused(
              `Reading the workbook takes more than ${LIMITS.heapMiB} MiB of memory. Send it as CSV.`,
            )
          : error,
      ),
    )
    worker.once('exit', () => clearTimeout(late))
  })
}

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

/** The bundler would follow `new Worker` and fail on what reads TypeScript: the thread is Node's own affair. */
const startThread = (options: WorkerOptions): Worker =>
  Reflect.construct(Worker, [
    join(process.cwd(), 'lib', 'spreadsheets', 'workbook-thread.mjs'),
    options,
  ]) as Worker

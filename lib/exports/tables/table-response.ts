import { create } from 'content-disposition'
import type { ExportTable } from '@/lib/exports/tables/export-table'
import { tableAsCsv } from '@/lib/exports/tables/table-as-csv'
import { LARGEST_WORKBOOK_ROWS, tableAsXlsx } from '@/lib/exports/tables/table-as-xlsx'
import { fileResponse } from '@/lib/exports/text-response'
import { works } from '@/lib/settings/works'

const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'

/** A table as a file to save: CSV, or a workbook where `as` is xlsx. */
export async function tableResponse(table: ExportTable, as: string | null): Promise<Response> {
  if (as !== 'xlsx') return fileResponse(tableAsCsv(table, works()), `${table.name}.csv`, 'text/csv')
  if (table.count > LARGEST_WORKBOOK_ROWS)
    return new Response(
      `The table has ${table.count} rows, and a workbook is made of ${LARGEST_WORKBOOK_ROWS} at most. Take it as CSV.`,
      { status: 413, headers: { 'cache-control': 'no-store' } },
    )
  const workbook = await tableAsXlsx(table, works())
  return new Response(new Uint8Array(workbook), {
    headers: {
      'content-type': XLSX,
      'content-disposition': create(`${table.name}.xlsx`),
      'cache-control': 'private, no-store',
      'x-content-type-options': 'nosniff',
    },
  })
}

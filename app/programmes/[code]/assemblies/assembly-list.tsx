import { assembliesAddress, assemblyAddress, inspectionsAddress, lotsAddress } from '@/app/addresses'
import { Empty } from '@/app/ui/empty'
import { Pagination } from '@/app/ui/pagination'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { assemblyLife } from '@/shared/records/assembly-life'

const A_PAGE = 40

interface AssemblyListProps {
  view: ProgrammeView
  serials: readonly string[]
  /** What was searched for. */
  asked: string
  page: number
}

/** Assemblies by serial number with what is on record of each, a page at a time. */
export function AssemblyList({ view, serials, asked, page: wanted }: AssemblyListProps) {
  const pages = Math.max(1, Math.ceil(serials.length / A_PAGE))
  const page = Number.isInteger(wanted) ? Math.min(pages, Math.max(1, wanted)) : 1
  const lives = serials
    .slice((page - 1) * A_PAGE, page * A_PAGE)
    .flatMap((serial) => assemblyLife(view.state.facts.records, serial) ?? [])
  if (serials.length === 0) {
    return (
      <Empty title={asked ? `No assembly on record bears ${asked}` : 'No assembly on record yet'}>
        {asked ? (
          <a href={assembliesAddress(view.code)}>All assemblies</a>
        ) : (
          <>
            <a href={lotsAddress(view.code)}>A lot’s page</a> takes the serial numbers it went into;{' '}
            <a href={inspectionsAddress(view.code)}>an inspection</a> names its assembly.
          </>
        )}
      </Empty>
    )
  }
  return (
    <>
      <RuledTable
        caption="Assemblies"
        captionHidden
        rows={lives}
        rowKey={({ serial }) => serial}
        columns={[
          {
            label: 'Serial number',
            names: true,
            cell: ({ serial }) => <a href={assemblyAddress(view.code, serial)}>{serial}</a>,
          },
          { label: 'Lots', cell: ({ lots }) => lots.map(({ code }) => code).join(', ') || 'none' },
          {
            label: 'Inspected',
            cell: ({ inspections }) => inspectionsInWords(inspections),
          },
          {
            label: 'Other records',
            set: 'number',
            cell: ({ events }) => events.filter(({ from }) => from.kind === 'record').length,
          },
        ]}
      />
      <Pagination
        label="Assemblies"
        page={page}
        pages={pages}
        addressOf={(one) =>
          `${assembliesAddress(view.code)}?${new URLSearchParams({ ...(asked && { serial: asked }), page: String(one) })}`
        }
      />
    </>
  )
}

function inspectionsInWords(inspections: readonly { readonly defects: readonly unknown[] }[]): string {
  if (inspections.length === 0) return 'not yet'
  const defects = inspections.reduce((sum, { defects: found }) => sum + found.length, 0)
  const times = inspections.length === 1 ? 'once' : `${inspections.length} times`
  return `${times}, ${defects === 0 ? 'no defect' : defects === 1 ? '1 defect' : `${defects} defects`}`
}

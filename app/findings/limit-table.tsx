import { limitAddress } from '@/app/addresses'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import type { Layer, GoverningRequirement } from '@/shared/plan/requirement'

/** Governing requirements, one a row, each with its layers. */
export function LimitTable({
  code,
  governingRequirements,
  statedOnPaper = false,
}: {
  code: string
  governingRequirements: readonly GoverningRequirement[]
  /** Paper has those that somebody has stated; the defaults stand in the pack. */
  statedOnPaper?: boolean
}) {
  return (
    <RuledTable
      caption="Limits in force"
      captionHidden
      narrow="cards-early"
      rows={governingRequirements}
      onPaper={statedOnPaper ? ({ layers }) => layers.length > 1 : undefined}
      rowKey={({ limit }) => limit.key}
      columns={[
        {
          label: 'Limit',
          names: true,
          cell: ({ limit }) => <a href={limitAddress(code, limit.key)}>{limit.label}</a>,
        },
        {
          label: 'Value',
          set: 'number',
          cell: ({ limit, value }) => (
            <>
              {limit.direction} <Quantity value={value} unit={limit.unit} />
            </>
          ),
        },
        { label: 'Source', cell: ({ authority, document }) => `${document} (${authority})` },
        { label: 'Overridden sources', cell: (governing) => <Overridden governing={governing} /> },
        { label: 'Default', set: 'shrink', cell: (governing) => <AgainstDefault governing={governing} /> },
      ]}
    />
  )
}

function Overridden({ governing: { layers, limit } }: { governing: GoverningRequirement }) {
  const others = layers.filter(({ rules }) => !rules)
  if (others.length === 0) return <>–</>
  return (
    <>
      {others.map((layer: Layer, position) => (
        <span key={position} className="block">
          <Quantity value={layer.value} unit={limit.unit} /> {layer.document} ({layer.authority})
        </span>
      ))}
    </>
  )
}

/** Looser than the default is marked, never only coloured. */
export function AgainstDefault({
  governing: { relaxed, conflict, value, limit },
}: {
  governing: GoverningRequirement
}) {
  return (
    <>
      {relaxed ? (
        <strong className="ink-rosin">looser than the default</strong>
      ) : value === limit.byDefault.value ? (
        'the default'
      ) : (
        'stricter'
      )}
      {conflict && <strong className="ink-carmine"> layers disagree</strong>}
    </>
  )
}

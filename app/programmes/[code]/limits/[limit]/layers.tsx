import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import type { Layer, Limit, GoverningRequirement } from '@/shared/plan/requirement'

/** Every layer that stands on the limit, highest authority first. */
export function Layers({ limit, governing }: { limit: Limit; governing: GoverningRequirement }) {
  return (
    <>
      <RuledTable
        caption="Layers of the limit"
        captionHidden
        rows={governing.layers}
        rowKey={(_layer, position) => position}
        columns={[
          {
            label: 'Document',
            names: true,
            cell: placeInDocument,
          },
          { label: 'Authority', cell: ({ authority }) => authority },
          {
            label: 'Value',
            set: 'number',
            cell: ({ value }) => (
              <>
                {limit.direction} <Quantity value={value} unit={limit.unit} />
              </>
            ),
          },
          {
            label: 'Effect',
            cell: ({ rules, relaxes }) => (
              <>
                {rules ? <strong>rules</strong> : 'gives way'}
                {relaxes && '; relaxes those below'}
              </>
            ),
          },
        ]}
      />
      <p className="field-hint">
        The default comes from: {limit.byDefault.from.cite} ({limit.byDefault.from.how}).
      </p>
    </>
  )
}

const placeInDocument = (layer: Layer): string =>
  layer.kind === 'default'
    ? `${layer.document}, default`
    : [layer.document, layer.clause].filter(Boolean).join(', ')

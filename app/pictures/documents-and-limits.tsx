import { limitAddress } from '@/app/addresses'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable, type RowGroup } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { Disclosure } from '@/app/ui/disclosure'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { applicableDocuments, type ApplicableDocument } from '@/shared/plan/parameters/documents'
import { governingRequirement, type Layer, type GoverningRequirement } from '@/shared/plan/requirement'
import { valueOf } from './value-of'

/** One document's say on one limit. */
interface Say {
  readonly governing: GoverningRequirement
  readonly layer: Layer
}

/** Every limit of the plan under the document it comes from: what rules, what gives way, what is disputed. */
export function DocumentsAndLimits({ view }: { view: ProgrammeView }) {
  const register = valueOf(view, applicableDocuments)
  if (!register) return null
  const message = messageOf(view)
  const registered = register.map((entry) => groupOf(entry, message))
  const named = new Set(registered.flatMap(({ rows }) => rows))
  const others = byDocument(message.filter((say) => !named.has(say)))
  return (
    <Section
      heading="What each document sets"
      lead="The strictest layer of a limit rules, unless a document of higher authority expressly relaxes it."
    >
      <MessageTable caption="Limits by applicable document" groups={registered} view={view} />
      <Disclosure
        summary={`Defaults from ${others.length} documents and practices that are not in the register`}
        printed={false}
      >
        <MessageTable caption="Limits by other source" groups={others} view={view} />
      </Disclosure>
    </Section>
  )
}

const messageOf = ({ state }: ProgrammeView): Say[] => {
  const limits = new Map(
    state.items.flatMap(({ definition }) => definition.limits).map((limit) => [limit.key, limit]),
  )
  return [...limits.values()].flatMap((limit) => {
    const governing = governingRequirement(limit, state.facts.requirements)
    return governing.layers.map((layer) => ({ governing, layer }))
  })
}

/** A limit may cite a document with or without its edition and table behind the number. */
function groupOf(entry: ApplicableDocument, message: readonly Say[]): RowGroup<Say> {
  const { document, edition, authority } = entry
  const cites = ({ layer }: Say): boolean =>
    layer.document.toLowerCase().startsWith(document.trim().toLowerCase())
  const rows = message.filter(cites)
  return {
    key: `${document} ${edition}`,
    heading: `${document}, ${edition} (${authority})${rows.length === 0 ? ': sets no limit here' : ''}`,
    rows,
  }
}

function byDocument(message: readonly Say[]): RowGroup<Say>[] {
  const documents = [...new Set(message.map(({ layer }) => layer.document))].toSorted()
  return documents.map((document) => ({
    key: document,
    heading: document,
    rows: message.filter(({ layer }) => layer.document === document),
  }))
}

interface MessageTableProps {
  caption: string
  groups: readonly RowGroup<Say>[]
  view: ProgrammeView
}

const MessageTable = ({ caption, groups, view }: MessageTableProps) => (
  <RuledTable
    caption={caption}
    captionHidden
    narrow="cards-early"
    groups={groups}
    rowKey={({ governing, layer }) =>
      `${governing.limit.key} ${layer.kind === 'stated' ? layer.id : layer.kind}`
    }
    columns={[
      {
        label: 'Limit',
        names: true,
        cell: ({ governing: { limit } }: Say) => (
          <a href={limitAddress(view.code, limit.key)}>{limit.label}</a>
        ),
      },
      {
        label: 'Asks',
        set: 'number',
        cell: ({ governing: { limit }, layer }: Say) => (
          <>
            {limit.direction} <Quantity value={layer.value} unit={limit.unit} />
          </>
        ),
      },
      {
        label: 'Where',
        cell: ({ layer }: Say) => (layer.kind === 'default' ? `default, ${layer.document}` : layer.clause),
      },
      { label: 'Status', cell: statusOf },
    ]}
  />
)

function statusOf({ governing, layer }: Say) {
  if (layer.rules) {
    return (
      <>
        rules
        {governing.conflict && <strong className="ink-carmine">, layers disagree</strong>}
        {governing.relaxed && <strong className="ink-rosin">, looser than the default</strong>}
      </>
    )
  }
  return (
    <>
      gives way to <Quantity value={governing.value} unit={governing.limit.unit} />, {governing.document}
    </>
  )
}

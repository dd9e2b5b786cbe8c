import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { Alike } from '@/shared/board/compared/alike'
import type { GapDifference, RingDifference } from '@/shared/board/compared/compare-boards'
import type { HoleDifference } from '@/shared/board/compared/compare-holes'
import type { TurnedFinding, TurnedPlace } from '@/shared/board/compared/turned-findings'
import type { BoardHole } from '@/shared/board/hole'
import { formatQuantity } from '@/shared/quantity/format'
import type { Verdict } from '@/shared/rules/finding'
import { LETTERS } from './comparison'
import { placeInWords, PlaceLink, placeName } from '../../place-name'

/** So many of those alike are named. */
const NAMED = 5

const mm = (value: number | undefined, none: string): string =>
  value === undefined ? none : formatQuantity(Math.round(value * 1000) / 1000, 'mm', 6)

const lead = (groups: readonly Alike<unknown>[]): string => {
  const all = groups.reduce((sum, { length }) => sum + length, 0)
  return all === 0 ? 'None changed.' : `${all} changed; those that changed alike are one row.`
}

const placeColumn = <Row,>(letter: string) => ({
  label: 'Place',
  set: 'shrink' as const,
  cell: (_: Alike<Row>, at: number) => <PlaceLink name={placeName(letter, at)} />,
})

const manyColumn = { label: 'How many', set: 'number' as const, cell: ({ length }: Alike<unknown>) => length }

/** The first of those alike by their names, and how many more there are. */
const namesColumn = <Row,>(label: string, nameOf: (row: Row) => string) => ({
  label,
  names: true,
  cell: (rows: Alike<Row>) => {
    const names = [...new Set(rows.map(nameOf))]
    const more = names.length - NAMED
    return `${names.slice(0, NAMED).join('; ')}${more > 0 ? `; and ${more} more` : ''}`
  },
})

const whereColumn = {
  label: 'The first at x, y in mm',
  set: 'number' as const,
  cell: ([{ at }]: Alike<{ at: readonly [number, number] }>) => placeInWords(at),
}

/** Every matter that is judged, before and after, and the places whose verdict is another. */
export function TurnedFindings({
  turned,
  places,
}: {
  turned: readonly TurnedFinding[]
  places: readonly Alike<TurnedPlace>[]
}) {
  return (
    <Section id="turned" heading="Judged" lead="Both judged by what the programme specifies today.">
      <RuledTable
        caption="What is judged, before and after"
        captionHidden
        rows={turned}
        rowKey={({ key }) => key}
        columns={[
          { label: 'Judged', names: true, cell: ({ title }) => title },
          { label: 'Before', cell: ({ before }) => <Was verdict={before} /> },
          { label: 'After', cell: ({ after }) => <Was verdict={after} /> },
          { label: 'Places that turn', set: 'number', cell: (each) => each.places.length },
        ]}
      />
      {places.length > 0 && (
        <RuledTable<Alike<TurnedPlace>>
          caption="Places that turn"
          narrow="cards-early"
          rows={places}
          rowKey={(_, at) => at}
          columns={[
            placeColumn(LETTERS.turned),
            manyColumn,
            namesColumn('Which', ({ subject }) => subject),
            { label: 'Before', set: 'shrink', cell: ([{ before }]) => <Was verdict={before} /> },
            { label: 'After', set: 'shrink', cell: ([{ after }]) => <Was verdict={after} /> },
            { label: 'Found at the first', cell: ([{ found }]) => found },
            whereColumn,
          ]}
        />
      )}
    </Section>
  )
}

const Was = ({ verdict }: { verdict: Verdict | undefined }) =>
  verdict ? <VerdictMark verdict={verdict} /> : <>not there</>

const HOLES: Record<HoleDifference['kind'], string> = {
  added: 'added',
  gone: 'gone',
  moved: 'moved',
  resized: 'of another size',
  plating: 'plated otherwise',
}

export function ChangedHoles({ holes }: { holes: readonly Alike<HoleDifference>[] }) {
  return (
    <Section id="holes" heading="Holes" lead={lead(holes)}>
      {holes.length > 0 && (
        <RuledTable<Alike<HoleDifference>>
          caption="Holes that changed"
          captionHidden
          rows={holes}
          rowKey={(_, at) => at}
          columns={[
            placeColumn(LETTERS.holes),
            manyColumn,
            namesColumn('Holes', ({ hole }) => nameOf(hole)),
            { label: 'Is', cell: ([{ kind }]) => HOLES[kind] },
            { label: 'Before', cell: ([difference]) => beforeOf(difference) },
            { label: 'After', cell: ([difference]) => afterOf(difference) },
            whereColumn,
          ]}
        />
      )}
    </Section>
  )
}

const nameOf = ({ component, pin, kind, net }: BoardHole): string =>
  [component, pin].filter(Boolean).join(' pin ') || (net ? `${kind}, ${net}` : kind)

const plating = ({ plated }: BoardHole): string =>
  plated === undefined ? 'plating not said' : plated ? 'plated' : 'unplated'

function beforeOf(difference: HoleDifference): string {
  switch (difference.kind) {
    case 'added':
      return 'not there'
    case 'gone':
      return mm(difference.hole.diameterMm, '')
    case 'moved':
      return 'at its place'
    case 'resized':
      return mm(difference.before.diameterMm, '')
    case 'plating':
      return plating(difference.before)
  }
}

function afterOf(difference: HoleDifference): string {
  switch (difference.kind) {
    case 'gone':
      return 'not there'
    case 'added':
    case 'resized':
      return mm(difference.hole.diameterMm, '')
    case 'moved':
      return `${mm(difference.byMm, '')} off it`
    case 'plating':
      return plating(difference.hole)
  }
}

export function ChangedRings({ rings }: { rings: readonly Alike<RingDifference>[] }) {
  return (
    <Section id="rings" heading="Rings" lead={lead(rings)}>
      {rings.length > 0 && (
        <RuledTable<Alike<RingDifference>>
          caption="Rings that changed"
          captionHidden
          rows={rings}
          rowKey={(_, at) => at}
          columns={[
            placeColumn(LETTERS.rings),
            manyColumn,
            namesColumn('Holes', ({ hole, layer }) => `${nameOf(hole)}, ${layer}`),
            { label: 'Before', set: 'number', cell: ([{ beforeMm }]) => mm(beforeMm, 'no land') },
            { label: 'After', set: 'number', cell: ([{ afterMm }]) => mm(afterMm, 'no land') },
            whereColumn,
          ]}
        />
      )}
    </Section>
  )
}

export function ChangedGaps({ gaps, reachMm }: { gaps: readonly Alike<GapDifference>[]; reachMm: number }) {
  const wide = `over ${mm(reachMm, '')}`
  return (
    <Section id="gaps" heading="Gaps" lead={lead(gaps)}>
      {gaps.length > 0 && (
        <RuledTable<Alike<GapDifference>>
          caption="Gaps that changed"
          captionHidden
          rows={gaps}
          rowKey={(_, at) => at}
          columns={[
            placeColumn(LETTERS.gaps),
            manyColumn,
            namesColumn('Between', ({ nets, layer }) => `${nets.join(' and ')}, ${layer}`),
            { label: 'Before', set: 'number', cell: ([{ beforeMm }]) => mm(beforeMm, wide) },
            { label: 'After', set: 'number', cell: ([{ afterMm }]) => mm(afterMm, wide) },
            whereColumn,
          ]}
        />
      )}
    </Section>
  )
}

import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { GapDifference, RingDifference } from '@/shared/board/compared/compare-boards'
import type { HoleDifference } from '@/shared/board/compared/compare-holes'
import type { TurnedFinding, TurnedPlace } from '@/shared/board/compared/turned-findings'
import type { BoardHole } from '@/shared/board/hole'
import { middleOf } from '@/shared/board/joined-copper'
import { formatQuantity } from '@/shared/quantity/format'
import type { Verdict } from '@/shared/rules/finding'
import { placeInWords, PlaceLink, placeName } from '../../place-name'

/** A table shows so many rows; how many there are is said above it. */
export const SHOWN = 60
/** The letters of what changed, in tables and picture. */
export const LETTERS = { holes: 'H', rings: 'K', gaps: 'L', turned: 'V' } as const

const mm = (value: number | undefined, none: string): string =>
  value === undefined ? none : formatQuantity(Math.round(value * 1000) / 1000, 'mm', 6)

const lead = (all: number, shown: number): string =>
  all === 0
    ? 'None changed.'
    : all > shown
      ? `${all} changed; the first ${shown} are listed.`
      : `${all} changed.`

const placeColumn = <Row,>(letter: string) => ({
  label: 'Place',
  set: 'shrink' as const,
  cell: (_: Row, at: number) => <PlaceLink name={placeName(letter, at)} />,
})
const whereColumn = {
  label: 'At x, y in mm',
  set: 'number' as const,
  cell: ({ at }: { at: readonly [number, number] }) => placeInWords(at),
}

/** Every matter that is judged, before and after, and the places whose verdict is another. */
export function TurnedFindings({
  turned,
  places,
}: {
  turned: readonly TurnedFinding[]
  places: readonly TurnedPlace[]
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
        <RuledTable
          caption="Places that turn"
          narrow="cards-early"
          rows={places.slice(0, SHOWN)}
          rowKey={(_, at) => at}
          columns={[
            placeColumn(LETTERS.turned),
            { label: 'Which', names: true, cell: ({ subject }) => subject },
            { label: 'Before', set: 'shrink', cell: ({ before }) => <Was verdict={before} /> },
            { label: 'After', set: 'shrink', cell: ({ after }) => <Was verdict={after} /> },
            { label: 'Found', cell: ({ found }) => found },
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

export function ChangedHoles({ holes }: { holes: readonly HoleDifference[] }) {
  return (
    <Section id="holes" heading="Holes" lead={lead(holes.length, SHOWN)}>
      {holes.length > 0 && (
        <RuledTable
          caption="Holes that changed"
          captionHidden
          rows={holes.slice(0, SHOWN)}
          rowKey={(_, at) => at}
          columns={[
            placeColumn(LETTERS.holes),
            { label: 'Hole', names: true, cell: ({ hole }) => nameOf(hole) },
            { label: 'Is', cell: ({ kind }) => HOLES[kind] },
            { label: 'Before', cell: beforeOf },
            { label: 'After', cell: afterOf },
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
      return `at ${placeInWords(middleOf(difference.before))}`
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
      return `${mm(difference.byMm, '')} away`
    case 'plating':
      return plating(difference.hole)
  }
}

export function ChangedRings({ rings }: { rings: readonly RingDifference[] }) {
  return (
    <Section id="rings" heading="Rings" lead={lead(rings.length, SHOWN)}>
      {rings.length > 0 && (
        <RuledTable
          caption="Rings that changed"
          captionHidden
          rows={rings.slice(0, SHOWN)}
          rowKey={(_, at) => at}
          columns={[
            placeColumn(LETTERS.rings),
            { label: 'Hole', names: true, cell: ({ hole, layer }) => `${nameOf(hole)}, ${layer}` },
            { label: 'Before', set: 'number', cell: ({ beforeMm }) => mm(beforeMm, 'no land') },
            { label: 'After', set: 'number', cell: ({ afterMm }) => mm(afterMm, 'no land') },
            whereColumn,
          ]}
        />
      )}
    </Section>
  )
}

export function ChangedGaps({ gaps, reachMm }: { gaps: readonly GapDifference[]; reachMm: number }) {
  const wide = `over ${mm(reachMm, '')}`
  return (
    <Section id="gaps" heading="Gaps" lead={lead(gaps.length, SHOWN)}>
      {gaps.length > 0 && (
        <RuledTable
          caption="Gaps that changed"
          captionHidden
          rows={gaps.slice(0, SHOWN)}
          rowKey={(_, at) => at}
          columns={[
            placeColumn(LETTERS.gaps),
            { label: 'Between', names: true, cell: ({ nets, layer }) => `${nets.join(' and ')}, ${layer}` },
            { label: 'Before', set: 'number', cell: ({ beforeMm }) => mm(beforeMm, wide) },
            { label: 'After', set: 'number', cell: ({ afterMm }) => mm(afterMm, wide) },
            whereColumn,
          ]}
        />
      )}
    </Section>
  )
}

import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { Board } from '@/shared/board/board'
import type { BoardMark } from '@/shared/board/board-marks'
import type { ConductorWidth } from '@/shared/board/conductor-widths'
import type { BoardHole } from '@/shared/board/hole'
import { holeGroups, type HoleGroup } from '@/shared/board/hole-groups'
import { formatQuantity } from '@/shared/quantity/format'
import { placeInWords } from './place-name'

const mm = (value: number): string => formatQuantity(Math.round(value * 1000) / 1000, 'mm', 6)
const KINDS: Record<BoardHole['kind'], string> = {
  component: 'for leads',
  via: 'vias',
  mounting: 'mounting holes',
}

/** Holes that are alike. */
export function HoleGroups({ board }: { board: Board }) {
  const groups = holeGroups(board.holes)
  return (
    <Section
      id="holes"
      heading="Holes"
      lead="Sizes as the drill files have them: whether drilled or finished, the board’s drawing says. Rings as drawn, before any allowance for making the board."
    >
      <RuledTable
        caption="Holes that are alike"
        captionHidden
        rows={groups}
        rowKey={(_, at) => at}
        columns={[
          {
            label: 'Holes',
            names: true,
            cell: ({ kind, kindSure }) => (kindSure ? KINDS[kind] : `${KINDS[kind]}, by size only: confirm`),
          },
          { label: 'How many', set: 'number', cell: ({ holes }) => holes.length },
          { label: 'Hole', set: 'number', cell: sizeOf },
          {
            label: 'Land',
            set: 'number',
            cell: ({ landMm }) => (landMm === undefined ? 'none' : mm(landMm)),
          },
          {
            label: 'Least ring',
            set: 'number',
            cell: ({ ringMm }) => (ringMm === undefined ? 'none' : mm(ringMm)),
          },
          {
            label: 'Plated',
            cell: ({ plated }) => (plated === undefined ? 'not said' : plated ? 'yes' : 'no'),
          },
          { label: 'Components', cell: ({ components }) => components.join(', ') },
        ]}
      />
    </Section>
  )
}

const sizeOf = ({ diameterMm, lengthMm }: HoleGroup): string =>
  lengthMm - diameterMm > 0.01 ? `${mm(diameterMm)} × ${mm(lengthMm)}` : mm(diameterMm)

export function ConductorWidths({ board }: { board: Board }) {
  if (board.conductors.length === 0) return null
  return (
    <Section
      id="conductors"
      heading="Drawn widths"
      lead="Every line of a round tool: conductors, and sometimes text or the edges of a plane."
    >
      <RuledTable<ConductorWidth>
        caption="Widths drawn"
        captionHidden
        rows={board.conductors}
        rowKey={({ layer, widthMm }) => `${layer} ${widthMm}`}
        columns={[
          { label: 'Width', set: 'number', names: true, cell: ({ widthMm }) => mm(widthMm) },
          { label: 'Layer', cell: ({ layer }) => layer },
          {
            label: 'Length in all',
            set: 'number',
            cell: ({ lengthMm }) => formatQuantity(Math.round(lengthMm), 'mm', 6),
          },
          { label: 'Lines', set: 'number', cell: ({ times }) => times },
        ]}
      />
    </Section>
  )
}

const MARK_KINDS: Record<BoardMark['kind'], string> = { fiducial: 'Fiducial', 'test point': 'Test point' }
const KNOWN_BY: Record<BoardMark['by'], string> = {
  attribute: 'the file says it',
  name: 'its name says it',
  shape: 'by its shape only: confirm',
}

/** What machines and probes find the board by. */
export function BoardMarks({ board }: { board: Board }) {
  if (board.marks.length === 0) return null
  return (
    <Section
      id="marks"
      heading="Fiducials and test points"
      lead="Lands that no part stands on: as the files say, as they are named, and else, of fiducials, by their shape."
    >
      <RuledTable<BoardMark>
        caption="Fiducials and test points"
        captionHidden
        rows={board.marks}
        rowKey={(_, at) => at}
        columns={[
          {
            label: 'Which',
            names: true,
            cell: ({ kind, name }) => [MARK_KINDS[kind], name].filter(Boolean).join(' '),
          },
          { label: 'Side', cell: ({ side }) => side },
          { label: 'Size', set: 'number', cell: ({ sizeMm }) => mm(sizeMm) },
          { label: 'Net', cell: ({ net }) => net ?? '–' },
          { label: 'Known by', cell: ({ by }) => KNOWN_BY[by] },
          { label: 'At x, y in mm', set: 'number', cell: ({ at }) => placeInWords(at) },
        ]}
      />
    </Section>
  )
}

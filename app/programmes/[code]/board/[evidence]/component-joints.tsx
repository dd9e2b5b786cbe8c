import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Board } from '@/shared/board/board'
import {
  jointCounts,
  jointsByComponent,
  referenceDifferences,
  type ComponentJoints as Component,
  type ReferenceDifferences,
} from '@/shared/board/joints-by-component'
import { partsList, type ListedRow } from '@/shared/plan/parameters/parts-list'
import { counted } from '@/shared/quantity/counted'
import { placeInWords } from './place-name'

const SOLDERED = { machine: 'by machine', hand: 'by hand' } as const

/** How many joints each component has, on which side and how they are soldered, and what the parts list has otherwise. */
export function ComponentJoints({ view, board }: { view: ProgrammeView; board: Board }) {
  const list = view.state.facts.values.get(partsList.key) as readonly ListedRow[] | undefined
  const placed = board.placement?.placed ?? []
  const components = jointsByComponent(board.joints, list ?? [], placed)
  if (board.joints.length === 0) return null
  return (
    <Section
      id="joints"
      heading="Joints"
      lead="Holes for leads, and lands that the copper files or the netlist give a pin. How they are soldered the parts list says; the side too, else the placement, else the side of the lands."
    >
      <RuledTable
        caption="Joints by side and soldering"
        rows={jointCounts(components)}
        rowKey={({ soldered, side }) => `${soldered} ${side}`}
        columns={[
          {
            label: 'Soldered',
            names: true,
            cell: ({ soldered }) => (soldered ? SOLDERED[soldered] : 'not said'),
          },
          { label: 'Side', cell: ({ side }) => side ?? 'not known' },
          { label: 'Components', set: 'number', cell: ({ components: number }) => number },
          { label: 'In holes', set: 'number', cell: ({ inHoles }) => inHoles },
          { label: 'On lands', set: 'number', cell: ({ onLands }) => onLands },
        ]}
      />
      <Differences differences={referenceDifferences(board.joints, list ?? [])} listed={list !== undefined} />
      {components.length > 0 && (
        <RuledTable
          caption="Joints by component"
          rows={components}
          rowKey={({ component }) => component}
          columns={[
            { label: 'Component', names: true, cell: ({ component }) => component },
            { label: 'In holes', set: 'number', cell: ({ inHoles }) => inHoles },
            { label: 'On the top', set: 'number', cell: ({ onTop }) => onTop },
            { label: 'On the bottom', set: 'number', cell: ({ onBottom }) => onBottom },
            { label: 'Side', cell: ({ side }) => side ?? 'not known' },
            { label: 'Soldered', cell: ({ soldered }) => (soldered ? SOLDERED[soldered] : 'not said') },
            ...(placed.length > 0
              ? [
                  {
                    label: 'Centre at x, y in mm',
                    set: 'number' as const,
                    cell: ({ at }: Component) => (at ? placeInWords(at) : 'not placed'),
                  },
                ]
              : []),
          ]}
        />
      )}
    </Section>
  )
}

function Differences({ differences, listed }: { differences: ReferenceDifferences; listed: boolean }) {
  const { onlyListed, onlyInFiles, nameless } = differences
  const lines = [
    ...(listed && onlyListed.length > 0
      ? [`On the parts list, not in the files: ${onlyListed.join(', ')}.`]
      : []),
    ...(listed && onlyInFiles.length > 0
      ? [`In the files, not on the parts list: ${onlyInFiles.join(', ')}.`]
      : []),
    ...(nameless > 0 ? [`${counted(nameless, 'joint', 'joints')} of no component that a file names.`] : []),
  ]
  if (lines.length === 0)
    return <p>{listed ? 'Parts list and files name the same components.' : 'There is no parts list.'}</p>
  return (
    <ul>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}

import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Board } from '@/shared/board/board'
import {
  placementDifferences,
  type DifferentComponent,
  type PlacementDifferenceKind,
} from '@/shared/board/placement/placement-check'
import { partsList, type ListedRow } from '@/shared/plan/parameters/parts-list'
import { counted } from '@/shared/quantity/counted'
import { formatQuantity } from '@/shared/quantity/format'
import { referencesInBrief } from '@/shared/works/references'
import { partsOnBoard } from '@/shared/works/parts-on-board'

/** What each way of disagreeing is called, and what to do about it. */
const WORDS: Readonly<Record<PlacementDifferenceKind, { readonly what: string; readonly then: string }>> = {
  'placed twice': {
    what: 'Placed more than once',
    then: 'Which place counts? Send a file that has it once.',
  },
  'listed, not placed': {
    what: 'On the parts list, placed nowhere',
    then: 'It would be left out, or is put in by hand.',
  },
  'on the board, not placed': {
    what: 'Has pins on the board, neither placed nor on the parts list',
    then: 'It stays empty, or is missing in both.',
  },
  'placed, not listed': { what: 'Placed, not on the parts list', then: 'No part is ordered for it.' },
  'on the other side': {
    what: 'Placed on one side, its lands are on the other',
    then: 'One of the files is wrong.',
  },
  'on another side than listed': {
    what: 'Placed on one side, the parts list says the other',
    then: 'One of the two is wrong.',
  },
  'away from its pins': {
    what: 'Centre outside of its own pins',
    then: 'A body that reaches far beside its pins, or another place.',
  },
  'one row on both sides': {
    what: 'One row of the parts list, placed on both sides',
    then: 'Two rows say which are on which.',
  },
  'placed, not on the board': {
    what: 'Placed, and no file names a pin of it',
    then: 'A fiducial or a part without pins, as a rule.',
  },
  'one joint, not placed': {
    what: 'Of one joint only, not placed',
    then: 'A test point or a hole to hold the board, as a rule.',
  },
}

/** What the placement files place, held against parts list and pins. */
export function Placement({ view, board }: { view: ProgrammeView; board: Board }) {
  const { placement } = board
  if (!placement) return null
  const stated = view.state.facts.values.get(partsList.key) as readonly ListedRow[] | undefined
  const list = stated
    ? partsOnBoard(stated, []).map(({ names, row }) => ({ names, side: row.side }))
    : board.listed
  const differences = placementDifferences(placement.placed, { ...board, list })
  const sides = (side: 'top' | 'bottom') => placement.placed.filter((each) => each.side === side).length
  return (
    <Section
      id="placement"
      heading="Placement"
      lead={`Components by their centres, held against the pins that copper files and netlist name${LIST[stated ? 'stated' : board.listed ? 'file' : 'none']}. How each file lies on the board stands with the files.`}
    >
      {placement.placed.length === 0 ? (
        <p>No placement file lies on the board, so that nothing of it is used.</p>
      ) : (
        <>
          <p>
            {counted(placement.placed.length, 'component is', 'components are')} placed: {sides('top')} on the
            top, {sides('bottom')} on the bottom.
          </p>
          {differences.length === 0 ? (
            <p>Placement, {list ? 'parts list ' : ''}and pins name the same components in the same places.</p>
          ) : (
            <RuledTable
              caption="Where placement, parts list and board differ"
              narrow="cards-early"
              rows={differences}
              rowKey={({ kind }) => kind}
              columns={[
                { label: 'Difference', names: true, cell: ({ kind }) => WORDS[kind].what },
                { label: 'How many', set: 'number', cell: ({ components }) => components.length },
                { label: 'Which', cell: ({ components }) => inWords(components) },
                { label: 'What it means', cell: ({ kind }) => WORDS[kind].then },
              ]}
            />
          )}
        </>
      )}
    </Section>
  )
}

/** Which parts list they are held against. */
const LIST = {
  stated: ', and against the parts list of the specification',
  file: ', and against the parts list among the files',
  none: '; there is no parts list to hold them against',
} as const

/** In brief; where each has a distance of its own, one by one. */
const inWords = (components: readonly DifferentComponent[]): string =>
  components.every(({ awayMm }) => awayMm === undefined)
    ? referencesInBrief(components.map(({ reference }) => reference))
    : components.map(({ reference, awayMm = 0 }) => `${reference} (${mm(awayMm)})`).join(', ')

const mm = (value: number): string => formatQuantity(Math.round(value * 100) / 100, 'mm', 5)

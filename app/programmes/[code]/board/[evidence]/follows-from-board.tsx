import { fromBoardAddress } from '@/app/addresses'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Board } from '@/shared/board/board'
import { boardProposals } from '../../items/[item]/board-proposal'
import { ProposedValue } from '../../items/[item]/proposed-value'

interface FollowsFromBoardProps {
  view: ProgrammeView
  evidence: string
  board: Board
}

/** What follows from the files for the specification, as revisions to look at; none is saved by itself. */
export function FollowsFromBoard({ view, evidence, board }: FollowsFromBoardProps) {
  const proposals = boardProposals(view, board)
  return (
    <Section
      id="follows"
      heading="What follows for the specification"
      lead="Each value as the files have it, beside what stands. Nothing is saved before somebody has looked at it; its reason names the archive and its hash. The way of travel is not in the files: the board is taken to travel along x, or as its length stands."
    >
      {proposals.map((proposal) => (
        <ProposedValue
          key={proposal.parameter.key}
          view={view}
          proposal={proposal}
          href={fromBoardAddress(view.code, proposal.item, proposal.parameter.key, evidence)}
          source="the files"
        />
      ))}
    </Section>
  )
}

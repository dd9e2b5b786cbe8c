import { randomUUID } from 'node:crypto'
import { fromBoardAddress } from '@/app/addresses'
import { adoptFromBoard } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, TickBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { BoardArchive } from '@/lib/queries/board-files'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Board } from '@/shared/board/board'
import { refusal } from '@/shared/policy'
import { boardProposals, reasonFrom } from '../../items/[item]/board-proposal'
import { ProposedValue } from '../../items/[item]/proposed-value'
import type { ValueProposal } from '../../items/[item]/value-proposal'

interface FollowsFromBoardProps {
  view: ProgrammeView
  archive: BoardArchive
  board: Board
}

/** What follows from the files for the specification: adopted together for one reason, or each by its own form; none is saved by itself. */
export function FollowsFromBoard({ view, archive, board }: FollowsFromBoardProps) {
  const proposals = boardProposals(view, board)
  const adoptable = proposals.filter((proposal) => canAdopt(view, proposal))
  const values = (
    <div className="board-proposals">
      {proposals.map((proposal) => (
        <ProposedValue
          key={proposal.parameter.key}
          view={view}
          proposal={proposal}
          href={fromBoardAddress(view.code, proposal.item, proposal.parameter.key, archive.evidence)}
          source="the files"
          adopt={adoptable.includes(proposal) && <Adopt view={view} proposal={proposal} />}
          incomplete={!isWhole(proposal)}
        />
      ))}
    </div>
  )
  return (
    <Section
      id="follows"
      heading="What follows for the specification"
      lead="Each value as the files have it, beside what stands. Nothing is saved before somebody has looked at it; its reason names the archive and its hash. The way of travel is not in the files: the board is taken to travel along x, or as its length stands."
    >
      {adoptable.length === 0 ? (
        values
      ) : (
        <CommandForm
          action={adoptFromBoard}
          formKey={randomUUID()}
          hidden={{ programme: view.code, evidence: archive.evidence }}
          label="Adopt values from the board files"
        >
          {values}
          <div className="form-narrow form-stack">
            <LinesBox
              name="reason"
              label="Why, for all that are ticked"
              hint="Each value becomes a revision of its own, with this reason and an entry in the trail. Where one cannot be adopted, none is."
              rows={2}
              defaultValue={reasonFrom(archive)}
              required
            />
            <SubmitButton>Adopt the ticked values</SubmitButton>
          </div>
        </CommandForm>
      )}
    </Section>
  )
}

/** Whether the files know all that the value asks; else its own form is where the rest is typed. */
const isWhole = ({ parameter, value }: ValueProposal): boolean => parameter.schema.safeParse(value).success

const canAdopt = (view: ProgrammeView, proposal: ValueProposal): boolean =>
  proposal.differences.length > 0 &&
  isWhole(proposal) &&
  !refusal('adopt-from-board', view.actor, { parameters: [proposal.parameter] })

interface AdoptProps {
  view: ProgrammeView
  proposal: ValueProposal
}

/** The tick of one value, with the value as it is shown and the revision it is shown beside. */
function Adopt({ view, proposal: { parameter, value } }: AdoptProps) {
  const { key, label } = parameter
  return (
    <>
      <input type="hidden" name={`proposed.${key}`} value={JSON.stringify(value)} />
      <input type="hidden" name={`seen.${key}`} value={view.state.revisions.get(key)?.number ?? 0} />
      <TickBox name={`values.${key}`} label={`Adopt ${label} as the files have it`} />
    </>
  )
}

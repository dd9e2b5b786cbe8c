import { itemNamed } from '@/lib/exports/tables/item-named'
import { exportTable, instantOf, numberOf, textOf, type ExportTable } from '@/lib/exports/tables/export-table'
import { readAllComments } from '@/lib/queries/comments'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ApprovalEntry, EvidenceEntry, GateSignatureEntry } from '@/shared/gate/programme-state'
import type { Comment } from '@/shared/reviews/review'

/* Tables of what was put in evidence, said beside it, and signed. */

export const evidenceTable = (view: ProgrammeView): ExportTable =>
  exportTable<EvidenceEntry>(
    'evidence',
    [
      textOf('Item', ({ itemKey }) => itemNamed(view.state, itemKey)),
      textOf('Kind', ({ kind }) => kind),
      textOf('Note', ({ note }) => note),
      textOf('File', ({ fileName }) => fileName),
      textOf('Address', ({ url }) => url),
      textOf('SHA-256', ({ sha256 }) => sha256),
      textOf('Added by', ({ addedByName }) => addedByName),
      instantOf('Added at', ({ at }) => at),
    ],
    view.state.evidence,
  )

/** Every approval given, those that lapsed or were given again among them. */
export const approvalsTable = (view: ProgrammeView): ExportTable => {
  const holding = new Set(
    view.judgement.items.flatMap(({ approvals }) =>
      approvals.filter(({ holds }) => holds).map(({ approval }) => approval?.id),
    ),
  )
  return exportTable<ApprovalEntry>(
    'approvals',
    [
      textOf('Item', ({ itemKey }) => itemNamed(view.state, itemKey)),
      textOf('Department', ({ department }) => department),
      textOf('By', ({ personName }) => personName),
      instantOf('At', ({ at }) => at),
      textOf('Holds', ({ id }) => (holding.has(id) ? 'yes' : 'no')),
      textOf('Content hash', ({ digest }) => digest),
    ],
    view.state.approvals,
  )
}

/** Every signature of a gate, those that lapsed or were given again among them. */
export const gateSignaturesTable = ({ state, judgement }: ProgrammeView): ExportTable => {
  const holding = new Set(
    judgement.gates.flatMap(({ signatures }) =>
      signatures.filter(({ holds }) => holds).map(({ signature }) => signature?.id),
    ),
  )
  return exportTable<GateSignatureEntry>(
    'gate-signatures',
    [
      textOf('Gate', ({ stage }) => stage),
      textOf('Department', ({ department }) => department),
      textOf('By', ({ personName }) => personName),
      instantOf('At', ({ at }) => at),
      textOf('Holds', ({ id }) => (holding.has(id) ? 'yes' : 'no')),
      textOf('Content hash', ({ digest }) => digest),
      numberOf('Trail up to entry', ({ trailSeq }) => trailSeq),
      textOf('Newest hash of the trail then', ({ headHash }) => headHash),
      textOf('Merkle root', ({ merkleRoot }) => merkleRoot),
    ],
    state.gateSignatures,
  )
}

export const commentsTable = async ({ state }: ProgrammeView): Promise<ExportTable> =>
  exportTable<Comment>(
    'comments',
    [
      numberOf('Comment', ({ number }) => number),
      textOf('About', ({ about }) => about.kind),
      textOf('Key', ({ about }) => about.key),
      textOf('Text', ({ text }) => text),
      textOf('Mentions', ({ mentions }) => mentions.map(({ name }) => name).join('; ')),
      textOf('By', ({ author }) => author),
      instantOf('At', ({ at }) => at),
      textOf('Resolved by', ({ resolved }) => resolved?.by),
      instantOf('Resolved at', ({ resolved }) => resolved?.at),
      numberOf('Action', ({ action }) => action),
    ],
    await readAllComments(state.programme.id),
  )

import { findParameter } from '@/shared/catalogue/standard-plan'
import { parameterName, valueInBrief } from '@/shared/commands/named'
import { revisionInBrief, tableDifferences } from '@/shared/commands/specification/revision-in-brief'
import type { EvidenceEntry, ProgrammeState } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { counted } from '@/shared/quantity/counted'
import { answerStep, broughtBy } from './brought-by'
import type { Origins, RevisionOrigin } from './origins'
import type { WhyStep } from './step'

const EARLIER_TOLD = 12

/** A specified value: its newest revision, what brought it, and the revisions before. */
export function valueOrigin(key: string, state: ProgrammeState, origins: Origins): WhyStep {
  const [newest, ...earlier] = origins.revisions.get(key) ?? []
  const step = { what: parameterName(key), place: { kind: 'parameter', parameter: key } as const }
  if (!newest) {
    const owner = findParameter(key)?.owner
    return { ...step, says: `not specified yet${owner ? `; ${DEPARTMENT_NAMES[owner]} does` : ''}` }
  }
  return {
    ...step,
    says: valueInBrief(key, newest.value),
    ...revisionTold(key, newest, earlier[0]),
    rests: [
      ...broughtBy(newest, { parameter: key }, state, origins),
      ...earlier.slice(0, EARLIER_TOLD).map((revision, position) => ({
        what: `Before: revision ${revision.number}`,
        says: valueInBrief(key, revision.value),
        ...revisionTold(key, revision, earlier[position + 1]),
      })),
      ...(earlier.length > EARLIER_TOLD
        ? [{ what: `and ${earlier.length - EARLIER_TOLD} earlier revisions, on the value’s own page` }]
        : []),
    ],
  }
}

const revisionTold = (
  key: string,
  { number, value, reason, author, at }: RevisionOrigin,
  before: RevisionOrigin | undefined,
): Partial<WhyStep> => ({
  lines: revisionLines(key, number, value, before),
  by: { name: author, at },
  words: reason,
  recorded: { at, name: key },
})

/** What a revision changed: of a table every cell and row, a line each. */
function revisionLines(
  key: string,
  number: number,
  value: unknown,
  before: RevisionOrigin | undefined,
): string[] {
  if (!before) return [`Revision ${number}: first specified`]
  const differences = tableDifferences(key, before.value, value)
  return differences.length > 0
    ? [`Revision ${number}: ${counted(differences.length, 'difference', 'differences')}`, ...differences]
    : [`Revision ${number}: ${revisionInBrief(key, before.value, value)}`]
}

/** What else stands behind the values of some items: answers accepted on them, and what is attached to them. */
export const groundsOf = (
  items: readonly string[],
  { actions, evidence }: Pick<ProgrammeState, 'actions' | 'evidence'>,
): WhyStep[] => [
  ...actions
    .filter(
      ({ itemKey, study, outcome }) => items.includes(itemKey) && study === null && outcome === 'accepted',
    )
    .map(answerStep),
  ...evidence.filter(({ itemKey }) => items.includes(itemKey)).map(evidenceStep),
]

/** A file or link attached to an item. */
const evidenceStep = ({
  id,
  kind,
  note,
  fileName,
  url,
  sha256,
  addedByName,
  at,
}: EvidenceEntry): WhyStep => ({
  what: `Evidence: ${kind}`,
  file: { evidence: id, url, name: fileName ?? url ?? kind },
  by: { name: addedByName, at },
  words: note,
  recorded: { at, name: id },
  ...(sha256 && { lines: [`SHA-256 ${sha256}`] }),
})

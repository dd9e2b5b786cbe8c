import { findItem } from '@/shared/catalogue/standard-plan'
import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { itemAddress, routeCardAddress } from '@/app/addresses'
import { Comments } from '@/app/deliberation/comments'
import { ItemKeys } from '@/app/frame/item-keys'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ProposeFrom } from '@/app/lessons/propose-from'
import { ItemPictures } from '@/app/pictures/item-pictures'
import { TablesOfItem } from '@/app/pictures/tables/tables-of-item'
import { Cautions } from '@/app/ui/cautions'
import { Digest } from '@/app/ui/digest'
import { StatusMark } from '@/app/ui/status-mark'
import { openUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { itemStateFor } from '@/shared/gate/judgement'
import { cautionsOf } from '@/shared/gate/cautions'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { ItemStudies } from '../../options/item-studies'
import { ChangedSince } from './changed-since'
import { Covered } from './covered'
import { ItemActions } from './item-actions'
import { boardProposal } from './board-proposal'
import { Evidence } from './evidence'
import { FollowsFromParts } from './follows-from-parts'
import { filledInFromParts } from './parts-proposals'
import { Findings } from './findings'
import { Limits } from './limits'
import type { Asked } from './proposal-asked'
import { TailoredOut } from './tailored-out'
import { OpenPoints } from './open-points'
import { Signing } from './signing'
import { Values } from './values'
import type { ItemState } from '@/shared/gate/item-status'
import type { PlannedItem } from '@/shared/gate/programme-state'
import { learntIn } from '@/shared/lessons/lesson'
import type { Subject } from '@/shared/reviews/subject'

/** What the item settles, and which lesson brought it. */
const questionOf = ({ definition, lesson }: PlannedItem): string =>
  lesson && !lesson.inAsks ? `${definition.asks} ${learntIn(lesson)}` : definition.asks

/** What can be remarked on beside an item: itself, its values and its findings. */
const remarkable = ({ item: { definition } }: ItemState): [Subject, ...Subject[]] => [
  { kind: 'item', key: definition.key },
  ...definition.parameters.map(({ key }): Subject => ({ kind: 'parameter', key })),
  ...definition.rules.map(({ id }): Subject => ({ kind: 'finding', key: id })),
]

/** The items before and after this one, over all stages. */
function neighbours({ code, judgement: { items } }: ProgrammeView, key: string) {
  const here = items.findIndex(({ item }) => item.definition.key === key)
  const [previous, next] = [items[here - 1], items[here + 1]].map(
    (entry) => entry && itemAddress(code, entry.item.definition.key),
  )
  return { previous, next }
}

export const generateMetadata = programmeTitle<{ item: string }>(
  ({ code, item }) => `${findItem(item)?.title ?? 'Item'}, ${code}`,
)

/** One thing to be settled: its values, findings, evidence, questions and approvals. */
export default programmePage<{ item: string }, Asked & { upload?: string; comment?: string }>(
  async ({ visit, code, params: { item: key }, searchParams: { upload, comment, ...asking } }) => {
    const answer = upload ? openUploadAnswer(upload, uploadSecret()) : {}
    const state = itemStateFor(visit.view.judgement, addressPart(key))
    if (!state) notFound()
    const filledIn = (await boardProposal(visit.view, asking)) ?? filledInFromParts(visit.view, asking)
    const definition = state.item.definition
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={routeCardAddress(code)}
        item={definition.key}
        place={[{ text: definition.title }]}
        title={definition.title}
        supplement={questionOf(state.item)}
        cells={[
          { label: 'Stage', value: STAGE_NAMES[definition.stage] },
          { label: 'Owner', value: DEPARTMENT_NAMES[definition.owner] },
          { label: 'Status', value: <StatusMark status={state.status} /> },
          { label: 'Content hash', value: <Digest value={state.digest} length={12} /> },
        ]}
      >
        {(view) => (
          <div className="item-sheet">
            <ItemKeys {...neighbours(view, definition.key)} />
            <aside className="item-margin" aria-label="Outstanding and approvals">
              <OpenPoints code={view.code} state={state} />
              <Signing view={view} state={state} hasPassword={visit.person.hasPassword} />
            </aside>
            <div className="item-main">
              <ChangedSince code={view.code} state={state} />
              <Cautions of={cautionsOf(state.item, view.judgement.findings)} />
              <ItemPictures item={definition.key} view={view} />
              <Findings view={view} state={state} />
              <Values view={view} state={state} asked={asking} filledIn={filledIn} />
              <FollowsFromParts view={view} state={state} />
              <Evidence view={view} state={state} answer={answer} />
              <ItemActions view={view} state={state} comment={comment} />
              <Comments view={view} subjects={remarkable(state)} item={definition.key} />
              <ItemStudies view={view} item={definition} />
              <Limits view={view} state={state} />
              <TablesOfItem item={definition.key} view={view} />
              <Covered view={view} state={state} />
              <TailoredOut view={view} state={state} />
              <ProposeFrom view={view} kind="item" what="this item" id={definition.key} />
            </div>
          </div>
        )}
      </ProgrammeSheet>
    )
  },
)

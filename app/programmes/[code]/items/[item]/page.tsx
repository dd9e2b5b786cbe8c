import { findItem } from '@/shared/catalogue/standard-plan'
import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { routeCardAddress } from '@/app/addresses'
import { Comments } from '@/app/deliberation/comments'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ProposeFrom } from '@/app/lessons/propose-from'
import { Cautions } from '@/app/ui/cautions'
import { Digest } from '@/app/ui/digest'
import { OnThisSheet } from '@/app/ui/on-this-sheet'
import { StatusMark } from '@/app/ui/status-mark'
import { openUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { itemStateFor } from '@/shared/gate/judgement'
import { cautionsOf } from '@/shared/gate/cautions'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { ItemStudies } from '../../options/item-studies'
import { Approvals } from './approvals'
import { ItemActions } from './item-actions'
import { boardProposal } from './board-proposal'
import { Evidence } from './evidence'
import { FollowsFromParts } from './follows-from-parts'
import { filledInFromParts } from './parts-proposals'
import { Findings } from './findings'
import { Limits } from './limits'
import { partsOf } from './parts-of'
import { Pictures } from './pictures'
import type { Asked } from './proposal-asked'
import { TailoredOut } from './tailored-out'
import { OpenPoints } from './open-points'
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
          <>
            <OnThisSheet parts={partsOf(state)} />
            <OpenPoints code={view.code} state={state} />
            <Cautions of={cautionsOf(state.item, view.judgement.findings)} />
            <Values view={view} state={state} asked={asking} filledIn={filledIn} />
            <FollowsFromParts view={view} state={state} />
            <Findings view={view} state={state} />
            <Pictures view={view} state={state} />
            <Limits view={view} state={state} />
            <Evidence view={view} state={state} answer={answer} />
            <ItemActions view={view} state={state} comment={comment} />
            <Comments view={view} subjects={remarkable(state)} item={definition.key} />
            <ItemStudies view={view} item={state.item.definition} />
            <Approvals view={view} state={state} hasPassword={visit.person.hasPassword} />
            <TailoredOut view={view} state={state} />
            <ProposeFrom view={view} kind="item" what="this item" id={state.item.definition.key} />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)

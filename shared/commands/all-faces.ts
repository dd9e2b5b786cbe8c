import type { z } from 'zod'
import type { AnyFace, Face } from '@/shared/commands/face'
import { acceptAnswer } from '@/shared/commands/actions/accept-answer'
import { addAlternative } from '@/shared/commands/specification/add-alternative'
import { addComment } from '@/shared/commands/comments/add-comment'
import { addInstrument } from '@/shared/commands/instruments/add-instrument'
import { addItem } from '@/shared/commands/plan/add-item'
import { addPerson } from '@/shared/commands/people/add-person'
import { addReadings } from '@/shared/commands/logs/add-readings'
import { addRecord } from '@/shared/commands/records/add-record'
import { adoptFromBoard } from '@/shared/commands/specification/adopt-from-board'
import { adoptOption } from '@/shared/commands/specification/adopt-option'
import { answerAction } from '@/shared/commands/actions/answer-action'
import { approveItem } from '@/shared/commands/signatures/approve-item'
import { approveItems } from '@/shared/commands/signatures/approve-items'
import { askAction } from '@/shared/commands/actions/ask-action'
import { attachAnswerFile } from '@/shared/commands/actions/attach-answer-file'
import { adoptChangeNotice } from '@/shared/commands/changes/adopt-change-notice'
import { answerChangeNotice } from '@/shared/commands/changes/answer-change-notice'
import { closeChangeNotice } from '@/shared/commands/changes/close-change-notice'
import { costChangeNotice } from '@/shared/commands/changes/cost-change-notice'
import { dropChange } from '@/shared/commands/changes/drop-change'
import { openChangeNotice } from '@/shared/commands/changes/open-change-notice'
import { proposeChange } from '@/shared/commands/changes/propose-change'
import { attachEvidence } from '@/shared/commands/evidence/attach-evidence'
import { confirmBoardFiles } from '@/shared/commands/evidence/confirm-board-files'
import { attachPicture } from '@/shared/commands/evidence/attach-picture'
import { calibrateInstrument } from '@/shared/commands/instruments/calibrate-instrument'
import { changeAlternative } from '@/shared/commands/specification/change-alternative'
import { changeOwnPassword } from '@/shared/commands/people/change-own-password'
import { changePerson } from '@/shared/commands/people/change-person'
import { correctInspection } from '@/shared/commands/inspections/correct-inspection'
import { correctLot } from '@/shared/commands/lots/correct-lot'
import { correctLotTest } from '@/shared/commands/lots/correct-lot-test'
import { correctRecord } from '@/shared/commands/records/correct-record'
import { stateCompanyRule } from '@/shared/commands/company-rules/state-company-rule'
import { withdrawCompanyRule } from '@/shared/commands/company-rules/withdraw-company-rule'
import { preferValue } from '@/shared/commands/company-rules/prefer-value'
import { withdrawPreference } from '@/shared/commands/company-rules/withdraw-preference'
import { takeCompanyRule } from '@/shared/commands/company-rules/take-company-rule'
import { keepOwnRule } from '@/shared/commands/company-rules/keep-own-rule'
import { attachCertificate } from '@/shared/commands/training/attach-certificate'
import { withdrawCertificate } from '@/shared/commands/training/withdraw-certificate'
import { closeLine } from '@/shared/commands/works/close-line'
import { closeMachine } from '@/shared/commands/works/close-machine'
import { leaveLine } from '@/shared/commands/works/leave-line'
import { describePart } from '@/shared/commands/parts/describe-part'
import { revisePart } from '@/shared/commands/parts/revise-part'
import { approvePart } from '@/shared/commands/parts/approve-part'
import { withdrawPart } from '@/shared/commands/parts/withdraw-part'
import { reinstatePart } from '@/shared/commands/parts/reinstate-part'
import { keepOwnValue } from '@/shared/commands/company-rules/keep-own-value'
import { takeUpItem } from '@/shared/commands/plan/take-up-item'
import { attachDrawing } from '@/shared/commands/parts/attach-drawing'
import { withdrawDrawing } from '@/shared/commands/parts/withdraw-drawing'
import { openLine } from '@/shared/commands/works/open-line'
import { openMachine } from '@/shared/commands/works/open-machine'
import { stateLine } from '@/shared/commands/works/state-line'
import { closeReview } from '@/shared/commands/reviews/close-review'
import { chooseDigest } from '@/shared/commands/desk/choose-digest'
import { createCalendarAddress } from '@/shared/commands/desk/create-calendar-address'
import { endDelegation } from '@/shared/commands/desk/end-delegation'
import { nameDelegate } from '@/shared/commands/desk/name-delegate'
import { revokeCalendarAddress } from '@/shared/commands/desk/revoke-calendar-address'
import { createMachineToken } from '@/shared/commands/logs/create-machine-token'
import { decideLesson } from '@/shared/commands/lessons/decide-lesson'
import { decideSetAside } from '@/shared/commands/plan/decide-set-aside'
import { disablePerson } from '@/shared/commands/people/disable-person'
import { disposeLot } from '@/shared/commands/lots/dispose-lot'
import { enablePerson } from '@/shared/commands/people/enable-person'
import { grantConcession } from '@/shared/commands/signatures/grant-concession'
import { handOverLead } from '@/shared/commands/programme/hand-over-lead'
import { inviteMember } from '@/shared/commands/programme/invite-member'
import { nameMinutes } from '@/shared/commands/reviews/name-minutes'
import { openLog } from '@/shared/commands/logs/open-log'
import { openNonconformity } from '@/shared/commands/nonconformities/open-nonconformity'
import { openOptionStudy } from '@/shared/commands/specification/open-option-study'
import { openProgramme } from '@/shared/commands/programme/open-programme'
import { openReview } from '@/shared/commands/reviews/open-review'
import { proposeLesson } from '@/shared/commands/lessons/propose-lesson'
import { proposeSetAside } from '@/shared/commands/plan/propose-set-aside'
import { receiveLot } from '@/shared/commands/lots/receive-lot'
import { allocateLot } from '@/shared/commands/lots/allocate-lot'
import { returnAllocation } from '@/shared/commands/lots/return-allocation'
import { addSupplier } from '@/shared/commands/suppliers/add-supplier'
import { closeSupplier } from '@/shared/commands/suppliers/close-supplier'
import { recordAttendance } from '@/shared/commands/reviews/record-attendance'
import { recordInspection } from '@/shared/commands/inspections/record-inspection'
import { recordStep } from '@/shared/commands/nonconformities/record-step'
import { refuseConcession } from '@/shared/commands/signatures/refuse-concession'
import { removeMember } from '@/shared/commands/programme/remove-member'
import { requestConcession } from '@/shared/commands/signatures/request-concession'
import { requestDeviation } from '@/shared/commands/signatures/request-deviation'
import { resetPassword } from '@/shared/commands/people/reset-password'
import { resolveComment } from '@/shared/commands/comments/resolve-comment'
import { restoreItem } from '@/shared/commands/plan/restore-item'
import { retireLesson } from '@/shared/commands/lessons/retire-lesson'
import { returnAnswer } from '@/shared/commands/actions/return-answer'
import { reviseParameter } from '@/shared/commands/specification/revise-parameter'
import { revokeMachineToken } from '@/shared/commands/logs/revoke-machine-token'
import { setMoneyCeiling } from '@/shared/commands/cost/set-money-ceiling'
import { signGate } from '@/shared/commands/signatures/sign-gate'
import { stateRequirement } from '@/shared/commands/specification/state-requirement'
import { strikeMinute } from '@/shared/commands/reviews/strike-minute'
import { takeInstrumentOutOfUse } from '@/shared/commands/instruments/take-instrument-out-of-use'
import { takeLead } from '@/shared/commands/programme/take-lead'
import { testLot } from '@/shared/commands/lots/test-lot'
import { traceLot } from '@/shared/commands/lots/trace-lot'
import { withdrawAction } from '@/shared/commands/actions/withdraw-action'
import { withdrawAlternative } from '@/shared/commands/specification/withdraw-alternative'
import { withdrawEvidence } from '@/shared/commands/evidence/withdraw-evidence'
import { withdrawInspection } from '@/shared/commands/inspections/withdraw-inspection'
import { withdrawLotTest } from '@/shared/commands/lots/withdraw-lot-test'
import { withdrawRecord } from '@/shared/commands/records/withdraw-record'
import { withdrawRequirement } from '@/shared/commands/specification/withdraw-requirement'
import { withdrawStep } from '@/shared/commands/nonconformities/withdraw-step'
import { writeMinute } from '@/shared/commands/reviews/write-minute'

/** The face of every command there is, in the order of the table of rights. A command that is not here cannot be written. */
export const FACES = {
  'open-programme': openProgramme,
  'invite-member': inviteMember,
  'remove-member': removeMember,
  'hand-over-lead': handOverLead,
  'take-lead': takeLead,
  'add-item': addItem,
  'take-up-item': takeUpItem,
  'propose-set-aside': proposeSetAside,
  'decide-set-aside': decideSetAside,
  'restore-item': restoreItem,
  'revise-parameter': reviseParameter,
  'state-requirement': stateRequirement,
  'withdraw-requirement': withdrawRequirement,
  'open-option-study': openOptionStudy,
  'add-alternative': addAlternative,
  'change-alternative': changeAlternative,
  'withdraw-alternative': withdrawAlternative,
  'adopt-option': adoptOption,
  'set-money-ceiling': setMoneyCeiling,
  'attach-evidence': attachEvidence,
  'confirm-board-files': confirmBoardFiles,
  'adopt-from-board': adoptFromBoard,
  'withdraw-evidence': withdrawEvidence,
  'add-supplier': addSupplier,
  'close-supplier': closeSupplier,
  'receive-lot': receiveLot,
  'allocate-lot': allocateLot,
  'return-allocation': returnAllocation,
  'test-lot': testLot,
  'correct-lot': correctLot,
  'correct-lot-test': correctLotTest,
  'withdraw-lot-test': withdrawLotTest,
  'dispose-lot': disposeLot,
  'trace-lot': traceLot,
  'describe-part': describePart,
  'revise-part': revisePart,
  'approve-part': approvePart,
  'withdraw-part': withdrawPart,
  'reinstate-part': reinstatePart,
  'attach-drawing': attachDrawing,
  'withdraw-drawing': withdrawDrawing,
  'open-line': openLine,
  'state-company-rule': stateCompanyRule,
  'withdraw-company-rule': withdrawCompanyRule,
  'prefer-value': preferValue,
  'withdraw-preference': withdrawPreference,
  'take-company-rule': takeCompanyRule,
  'keep-own-rule': keepOwnRule,
  'keep-own-value': keepOwnValue,
  'attach-certificate': attachCertificate,
  'withdraw-certificate': withdrawCertificate,
  'close-line': closeLine,
  'open-machine': openMachine,
  'close-machine': closeMachine,
  'state-line': stateLine,
  'leave-line': leaveLine,
  'open-log': openLog,
  'add-readings': addReadings,
  'record-inspection': recordInspection,
  'correct-inspection': correctInspection,
  'withdraw-inspection': withdrawInspection,
  'add-record': addRecord,
  'correct-record': correctRecord,
  'withdraw-record': withdrawRecord,
  'create-machine-token': createMachineToken,
  'revoke-machine-token': revokeMachineToken,
  'ask-action': askAction,
  'answer-action': answerAction,
  'attach-answer-file': attachAnswerFile,
  'accept-answer': acceptAnswer,
  'return-answer': returnAnswer,
  'withdraw-action': withdrawAction,
  'open-change-notice': openChangeNotice,
  'propose-change': proposeChange,
  'cost-change-notice': costChangeNotice,
  'drop-change': dropChange,
  'answer-change-notice': answerChangeNotice,
  'adopt-change-notice': adoptChangeNotice,
  'close-change-notice': closeChangeNotice,
  'open-review': openReview,
  'record-attendance': recordAttendance,
  'write-minute': writeMinute,
  'strike-minute': strikeMinute,
  'close-review': closeReview,
  'name-minutes': nameMinutes,
  'add-comment': addComment,
  'resolve-comment': resolveComment,
  'open-nonconformity': openNonconformity,
  'record-step': recordStep,
  'withdraw-step': withdrawStep,
  'attach-picture': attachPicture,
  'approve-item': approveItem,
  'approve-items': approveItems,
  'request-concession': requestConcession,
  'request-deviation': requestDeviation,
  'grant-concession': grantConcession,
  'refuse-concession': refuseConcession,
  'propose-lesson': proposeLesson,
  'decide-lesson': decideLesson,
  'retire-lesson': retireLesson,
  'sign-gate': signGate,
  'add-person': addPerson,
  'change-person': changePerson,
  'disable-person': disablePerson,
  'enable-person': enablePerson,
  'reset-password': resetPassword,
  'add-instrument': addInstrument,
  'calibrate-instrument': calibrateInstrument,
  'take-instrument-out-of-use': takeInstrumentOutOfUse,
  'change-own-password': changeOwnPassword,
  'choose-digest': chooseDigest,
  'create-calendar-address': createCalendarAddress,
  'end-delegation': endDelegation,
  'name-delegate': nameDelegate,
  'revoke-calendar-address': revokeCalendarAddress,
} as const satisfies Record<string, AnyFace>

export type CommandName = keyof typeof FACES
export const COMMAND_NAMES = Object.keys(FACES) as CommandName[]

type FaceOf<N extends CommandName> = (typeof FACES)[N]

/** What a command has to record at least, so that its entry can be told. */
export type RecordOf<N extends CommandName> = z.input<FaceOf<N>['record']>

/** What a command is done to, as far as it decides who may; undefined where the part alone decides. */
export type SubjectOf<N extends CommandName> = N extends CommandName
  ? FaceOf<N> extends Face<infer _Recorded, infer Subject>
    ? Subject
    : never
  : never

/** Commands whose part alone decides who may; and those that also ask whose it is. */
export type NameWithoutSubject = {
  [N in CommandName]: [SubjectOf<N>] extends [undefined] ? N : never
}[CommandName]
export type NameWithSubject = Exclude<CommandName, NameWithoutSubject>

export const faceOf = (name: CommandName): AnyFace => FACES[name]

export const isCommandName = (name: string): name is CommandName => Object.hasOwn(FACES, name)

import type { z } from 'zod'
import type { AnyCommand } from '@/lib/commands/command'
import { acceptAnswer } from '@/lib/commands/actions/accept-answer'
import { addAlternative } from '@/lib/commands/specification/add-alternative'
import { addComment } from '@/lib/commands/comments/add-comment'
import { addInstrument } from '@/lib/commands/instruments/add-instrument'
import { addItem } from '@/lib/commands/plan/add-item'
import { keepOwnValue } from '@/lib/commands/company-rules/keep-own-value'
import { takeUpItem } from '@/lib/commands/plan/take-up-item'
import { reinstatePart } from '@/lib/commands/parts/reinstate-part'
import { addPerson } from '@/lib/commands/people/add-person'
import { addReadings } from '@/lib/commands/logs/add-readings'
import { addRecord } from '@/lib/commands/records/add-record'
import { adoptFromBoard } from '@/lib/commands/specification/adopt-from-board'
import { adoptOption } from '@/lib/commands/specification/adopt-option'
import { answerAction } from '@/lib/commands/actions/answer-action'
import { approveItem } from '@/lib/commands/signatures/approve-item'
import { approveItems } from '@/lib/commands/signatures/approve-items'
import { askAction } from '@/lib/commands/actions/ask-action'
import { attachAnswerFile } from '@/lib/commands/actions/attach-answer-file'
import { adoptChangeNotice } from '@/lib/commands/changes/adopt-change-notice'
import { answerChangeNotice } from '@/lib/commands/changes/answer-change-notice'
import { closeChangeNotice } from '@/lib/commands/changes/close-change-notice'
import { costChangeNotice } from '@/lib/commands/changes/cost-change-notice'
import { dropChange } from '@/lib/commands/changes/drop-change'
import { openChangeNotice } from '@/lib/commands/changes/open-change-notice'
import { proposeChange } from '@/lib/commands/changes/propose-change'
import { attachEvidence } from '@/lib/commands/evidence/attach-evidence'
import { confirmBoardFiles } from '@/lib/commands/evidence/confirm-board-files'
import { attachPicture } from '@/lib/commands/evidence/attach-picture'
import { calibrateInstrument } from '@/lib/commands/instruments/calibrate-instrument'
import { changeAlternative } from '@/lib/commands/specification/change-alternative'
import { changeOwnPassword } from '@/lib/commands/people/change-own-password'
import { changePerson } from '@/lib/commands/people/change-person'
import { correctInspection } from '@/lib/commands/inspections/correct-inspection'
import { correctLot } from '@/lib/commands/lots/correct-lot'
import { correctLotTest } from '@/lib/commands/lots/correct-lot-test'
import { correctRecord } from '@/lib/commands/records/correct-record'
import { stateCompanyRule } from '@/lib/commands/company-rules/state-company-rule'
import { withdrawCompanyRule } from '@/lib/commands/company-rules/withdraw-company-rule'
import { preferValue } from '@/lib/commands/company-rules/prefer-value'
import { withdrawPreference } from '@/lib/commands/company-rules/withdraw-preference'
import { takeCompanyRule } from '@/lib/commands/company-rules/take-company-rule'
import { keepOwnRule } from '@/lib/commands/company-rules/keep-own-rule'
import { attachCertificate } from '@/lib/commands/training/attach-certificate'
import { withdrawCertificate } from '@/lib/commands/training/withdraw-certificate'
import { closeLine } from '@/lib/commands/works/close-line'
import { closeMachine } from '@/lib/commands/works/close-machine'
import { leaveLine } from '@/lib/commands/works/leave-line'
import { describePart } from '@/lib/commands/parts/describe-part'
import { revisePart } from '@/lib/commands/parts/revise-part'
import { approvePart } from '@/lib/commands/parts/approve-part'
import { withdrawPart } from '@/lib/commands/parts/withdraw-part'
import { attachDrawing } from '@/lib/commands/parts/attach-drawing'
import { withdrawDrawing } from '@/lib/commands/parts/withdraw-drawing'
import { openLine } from '@/lib/commands/works/open-line'
import { openMachine } from '@/lib/commands/works/open-machine'
import { stateLine } from '@/lib/commands/works/state-line'
import { closeReview } from '@/lib/commands/reviews/close-review'
import { chooseDigest } from '@/lib/commands/desk/choose-digest'
import { createCalendarAddress } from '@/lib/commands/desk/create-calendar-address'
import { endDelegation } from '@/lib/commands/desk/end-delegation'
import { nameDelegate } from '@/lib/commands/desk/name-delegate'
import { revokeCalendarAddress } from '@/lib/commands/desk/revoke-calendar-address'
import { createMachineToken } from '@/lib/commands/logs/create-machine-token'
import { decideLesson } from '@/lib/commands/lessons/decide-lesson'
import { decideSetAside } from '@/lib/commands/plan/decide-set-aside'
import { disablePerson } from '@/lib/commands/people/disable-person'
import { disposeLot } from '@/lib/commands/lots/dispose-lot'
import { enablePerson } from '@/lib/commands/people/enable-person'
import { grantConcession } from '@/lib/commands/signatures/grant-concession'
import { handOverLead } from '@/lib/commands/programme/hand-over-lead'
import { inviteMember } from '@/lib/commands/programme/invite-member'
import { nameMinutes } from '@/lib/commands/reviews/name-minutes'
import { openLog } from '@/lib/commands/logs/open-log'
import { openNonconformity } from '@/lib/commands/nonconformities/open-nonconformity'
import { openOptionStudy } from '@/lib/commands/specification/open-option-study'
import { openProgramme } from '@/lib/commands/programme/open-programme'
import { openReview } from '@/lib/commands/reviews/open-review'
import { proposeLesson } from '@/lib/commands/lessons/propose-lesson'
import { proposeSetAside } from '@/lib/commands/plan/propose-set-aside'
import { receiveLot } from '@/lib/commands/lots/receive-lot'
import { allocateLot } from '@/lib/commands/lots/allocate-lot'
import { returnAllocation } from '@/lib/commands/lots/return-allocation'
import { addSupplier } from '@/lib/commands/suppliers/add-supplier'
import { closeSupplier } from '@/lib/commands/suppliers/close-supplier'
import { recordAttendance } from '@/lib/commands/reviews/record-attendance'
import { recordInspection } from '@/lib/commands/inspections/record-inspection'
import { recordStep } from '@/lib/commands/nonconformities/record-step'
import { refuseConcession } from '@/lib/commands/signatures/refuse-concession'
import { removeMember } from '@/lib/commands/programme/remove-member'
import { requestConcession } from '@/lib/commands/signatures/request-concession'
import { requestDeviation } from '@/lib/commands/signatures/request-deviation'
import { resetPassword } from '@/lib/commands/people/reset-password'
import { resolveComment } from '@/lib/commands/comments/resolve-comment'
import { restoreItem } from '@/lib/commands/plan/restore-item'
import { retireLesson } from '@/lib/commands/lessons/retire-lesson'
import { returnAnswer } from '@/lib/commands/actions/return-answer'
import { reviseParameter } from '@/lib/commands/specification/revise-parameter'
import { revokeMachineToken } from '@/lib/commands/logs/revoke-machine-token'
import { setMoneyCeiling } from '@/lib/commands/cost/set-money-ceiling'
import { signGate } from '@/lib/commands/signatures/sign-gate'
import { stateRequirement } from '@/lib/commands/specification/state-requirement'
import { strikeMinute } from '@/lib/commands/reviews/strike-minute'
import { takeInstrumentOutOfUse } from '@/lib/commands/instruments/take-instrument-out-of-use'
import { takeLead } from '@/lib/commands/programme/take-lead'
import { testLot } from '@/lib/commands/lots/test-lot'
import { traceLot } from '@/lib/commands/lots/trace-lot'
import { withdrawAction } from '@/lib/commands/actions/withdraw-action'
import { withdrawAlternative } from '@/lib/commands/specification/withdraw-alternative'
import { withdrawEvidence } from '@/lib/commands/evidence/withdraw-evidence'
import { withdrawInspection } from '@/lib/commands/inspections/withdraw-inspection'
import { withdrawLotTest } from '@/lib/commands/lots/withdraw-lot-test'
import { withdrawRecord } from '@/lib/commands/records/withdraw-record'
import { withdrawRequirement } from '@/lib/commands/specification/withdraw-requirement'
import { withdrawStep } from '@/lib/commands/nonconformities/withdraw-step'
import { writeMinute } from '@/lib/commands/reviews/write-minute'
import type { CommandName } from '@/shared/commands/all-faces'

/** The work of every command, by the name of its face; one missing here does not compile. */
const COMMANDS = {
  'accept-answer': acceptAnswer,
  'add-comment': addComment,
  'add-instrument': addInstrument,
  'add-item': addItem,
  'take-up-item': takeUpItem,
  'add-person': addPerson,
  'add-readings': addReadings,
  'add-record': addRecord,
  'add-alternative': addAlternative,
  'change-alternative': changeAlternative,
  'withdraw-alternative': withdrawAlternative,
  'adopt-option': adoptOption,
  'set-money-ceiling': setMoneyCeiling,
  'answer-action': answerAction,
  'attach-answer-file': attachAnswerFile,
  'open-change-notice': openChangeNotice,
  'propose-change': proposeChange,
  'cost-change-notice': costChangeNotice,
  'drop-change': dropChange,
  'answer-change-notice': answerChangeNotice,
  'adopt-change-notice': adoptChangeNotice,
  'adopt-from-board': adoptFromBoard,
  'close-change-notice': closeChangeNotice,
  'approve-item': approveItem,
  'approve-items': approveItems,
  'ask-action': askAction,
  'attach-evidence': attachEvidence,
  'attach-picture': attachPicture,
  'confirm-board-files': confirmBoardFiles,
  'calibrate-instrument': calibrateInstrument,
  'change-own-password': changeOwnPassword,
  'change-person': changePerson,
  'close-review': closeReview,
  'correct-inspection': correctInspection,
  'correct-lot': correctLot,
  'correct-lot-test': correctLotTest,
  'correct-record': correctRecord,
  'create-machine-token': createMachineToken,
  'decide-lesson': decideLesson,
  'decide-set-aside': decideSetAside,
  'disable-person': disablePerson,
  'dispose-lot': disposeLot,
  'enable-person': enablePerson,
  'grant-concession': grantConcession,
  'hand-over-lead': handOverLead,
  'invite-member': inviteMember,
  'name-minutes': nameMinutes,
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
  'open-nonconformity': openNonconformity,
  'open-option-study': openOptionStudy,
  'open-programme': openProgramme,
  'open-review': openReview,
  'propose-lesson': proposeLesson,
  'propose-set-aside': proposeSetAside,
  'add-supplier': addSupplier,
  'close-supplier': closeSupplier,
  'receive-lot': receiveLot,
  'allocate-lot': allocateLot,
  'return-allocation': returnAllocation,
  'record-attendance': recordAttendance,
  'record-inspection': recordInspection,
  'record-step': recordStep,
  'refuse-concession': refuseConcession,
  'remove-member': removeMember,
  'request-concession': requestConcession,
  'request-deviation': requestDeviation,
  'reset-password': resetPassword,
  'resolve-comment': resolveComment,
  'restore-item': restoreItem,
  'retire-lesson': retireLesson,
  'return-answer': returnAnswer,
  'revise-parameter': reviseParameter,
  'revoke-machine-token': revokeMachineToken,
  'sign-gate': signGate,
  'state-requirement': stateRequirement,
  'strike-minute': strikeMinute,
  'take-instrument-out-of-use': takeInstrumentOutOfUse,
  'take-lead': takeLead,
  'test-lot': testLot,
  'trace-lot': traceLot,
  'withdraw-action': withdrawAction,
  'withdraw-evidence': withdrawEvidence,
  'withdraw-inspection': withdrawInspection,
  'withdraw-lot-test': withdrawLotTest,
  'withdraw-record': withdrawRecord,
  'withdraw-requirement': withdrawRequirement,
  'withdraw-step': withdrawStep,
  'write-minute': writeMinute,
  'choose-digest': chooseDigest,
  'create-calendar-address': createCalendarAddress,
  'end-delegation': endDelegation,
  'name-delegate': nameDelegate,
  'revoke-calendar-address': revokeCalendarAddress,
} as const satisfies Record<CommandName, AnyCommand>

/** What a command decides to write. */
export type ChangeOf<N extends CommandName> = ReturnType<(typeof COMMANDS)[N]['decide']>['change']

/** What a caller gives a command: its input before it is parsed. */
export type InputOf<N extends CommandName> = z.input<(typeof COMMANDS)[N]['input']>

/** What a caller is told when it was done. */
export type ResultOf<N extends CommandName> = NonNullable<
  ReturnType<(typeof COMMANDS)[N]['decide']>['result']
>

export const commandNamed = (name: CommandName): AnyCommand => COMMANDS[name]

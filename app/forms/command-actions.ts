'use server'
import { routeCardAddress } from '@/app/addresses'
import { formAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'

/* Forms that say their command's input box by box, and go where the command leads. */

export const acceptAnswer = formAction('accept-answer')
export const addInstrument = formAction('add-instrument')
export const addItem = formAction('add-item')
export const adoptOption = formAction('adopt-option')
export const answerAction = formAction('answer-action')
export const approveItem = formAction('approve-item')
export const askAction = formAction('ask-action')
export const attachEvidence = formAction('attach-evidence')
export const calibrateInstrument = formAction('calibrate-instrument')
export const changePerson = formAction('change-person')
export const chooseDigest = formAction('choose-digest')
export const decideLesson = formAction('decide-lesson')
export const decideSetAside = formAction('decide-set-aside')
export const disablePerson = formAction('disable-person')
export const disposeLot = formAction('dispose-lot')
export const enablePerson = formAction('enable-person')
export const endDelegation = formAction('end-delegation')
export const grantConcession = formAction('grant-concession')
export const handOverLead = formAction('hand-over-lead')
export const inviteMember = formAction('invite-member')
export const nameDelegate = formAction('name-delegate')
export const openLog = formAction('open-log')
export const openProgramme = formAction('open-programme', {
  then: ({ result }) => routeCardAddress(String(result['code'])),
})
/** What taught it is one box, "kind:key". */
export const proposeLesson = formAction('propose-lesson', {
  own: {
    source: (form) => {
      const [kind, key = ''] = text(form, 'source').split(/:(.*)/s)
      return { kind, key }
    },
  },
})
export const proposeSetAside = formAction('propose-set-aside')
export const receiveLot = formAction('receive-lot')
export const refuseConcession = formAction('refuse-concession')
export const removeMember = formAction('remove-member')
export const requestConcession = formAction('request-concession')
export const restoreItem = formAction('restore-item')
export const retireLesson = formAction('retire-lesson')
export const returnAnswer = formAction('return-answer')
export const revokeCalendarAddress = formAction('revoke-calendar-address')
export const revokeMachineToken = formAction('revoke-machine-token')
export const signGate = formAction('sign-gate')
export const stateRequirement = formAction('state-requirement')
export const takeInstrumentOutOfUse = formAction('take-instrument-out-of-use')
export const takeLead = formAction('take-lead')
/** Serial numbers in one box, parted by spaces, commas or lines. */
export const traceLot = formAction('trace-lot', {
  own: {
    assemblies: (form) =>
      text(form, 'assemblies')
        .split(/[\s,;]+/)
        .filter(Boolean),
  },
})
export const withdrawAction = formAction('withdraw-action')
export const withdrawEvidence = formAction('withdraw-evidence')
export const withdrawInspection = formAction('withdraw-inspection')
export const withdrawLotTest = formAction('withdraw-lot-test')
export const withdrawRecord = formAction('withdraw-record')
export const withdrawRequirement = formAction('withdraw-requirement')

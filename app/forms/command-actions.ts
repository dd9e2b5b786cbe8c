'use server'
import { itemAddress, routeCardAddress } from '@/app/addresses'
import { rowsFromForm } from '@/app/forms/column-value'
import { formAction, previewedAction } from '@/app/forms/form-action'
import { whereItLeads } from '@/app/forms/submit'
import { jsonTyped, numberTyped, text } from '@/app/forms/typed-text'
import { valueTyped } from '@/app/forms/value-typed'
import { ANSWER_COLUMNS } from '@/shared/cost/cost-line'

/* Forms that say their command's input box by box, and go where the command leads. */

export const acceptAnswer = formAction('accept-answer')
export const addInstrument = formAction('add-instrument')
export const addSupplier = formAction('add-supplier')
export const addItem = formAction('add-item')
/** The values travel as the page showed them, whatever shape each has; those ticked are adopted. */
export const adoptFromBoard = formAction('adopt-from-board', {
  own: {
    values: (form) =>
      [...form.keys()].flatMap((name) => {
        const [, parameter] = /^values\.([a-z0-9-]+)$/.exec(name) ?? []
        if (parameter === undefined) return []
        const seen = numberTyped(form, `seen.${parameter}`)
        return [{ parameter, value: jsonTyped(form, `proposed.${parameter}`), seen }]
      }),
  },
  then: (done, form) => `${whereItLeads(done, form)}#follows`,
})
export const adoptOption = formAction('adopt-option')
export const adoptChangeNotice = formAction('adopt-change-notice')
export const allocateLot = formAction('allocate-lot')
export const answerChangeNotice = formAction('answer-change-notice')
/** Rows of amounts, in which one without a figure is an amount that is not known. */
export const answerAction = formAction('answer-action', {
  own: { amounts: (form) => rowsFromForm(form, 'amounts', ANSWER_COLUMNS) },
})
/** On to the next item to sign, where that was asked. */
export const approveItem = formAction('approve-item', {
  then: (done, form) => {
    const next = text(form, 'intent') === 'next' && text(form, 'next')
    return next ? `${itemAddress(text(form, 'programme'), next)}#approvals` : whereItLeads(done, form)
  },
})
export const askAction = formAction('ask-action')
export const attachEvidence = formAction('attach-evidence')
export const calibrateInstrument = formAction('calibrate-instrument')
/** No department in the works is an answer too. */
export const changePerson = formAction('change-person', {
  own: { worksDepartment: (form) => text(form, 'worksDepartment') || null },
})
export const confirmBoardFiles = formAction('confirm-board-files')
export const closeChangeNotice = formAction('close-change-notice')
export const closeSupplier = formAction('close-supplier')
export const costChangeNotice = formAction('cost-change-notice')
export const chooseDigest = formAction('choose-digest')
export const decideLesson = formAction('decide-lesson')
export const decideSetAside = formAction('decide-set-aside')
export const disablePerson = formAction('disable-person')
export const disposeLot = previewedAction('dispose-lot')
export const dropChange = formAction('drop-change')
export const enablePerson = formAction('enable-person')
export const endDelegation = formAction('end-delegation')
export const grantConcession = formAction('grant-concession')
/** The preferred value travels as it stands, whatever shape its parameter has. */
export const takePreferredValue = formAction('revise-parameter', {
  own: { value: (form) => jsonTyped(form, 'preferred') },
})
export const keepOwnValue = formAction('keep-own-value')
export const keepOwnRule = formAction('keep-own-rule')
export const handOverLead = formAction('hand-over-lead')
export const inviteMember = formAction('invite-member')
export const openChangeNotice = formAction('open-change-notice')
export const nameDelegate = formAction('name-delegate')
export const openLog = formAction('open-log')
export const openLine = formAction('open-line')
export const closeLine = formAction('close-line')
export const openMachine = formAction('open-machine')
export const closeMachine = formAction('close-machine')
export const stateLine = formAction('state-line')
export const leaveLine = formAction('leave-line')
export const openProgramme = formAction('open-programme', {
  then: ({ result }) => routeCardAddress(String(result['code'])),
})
/** The value is asked for as its parameter is declared. */
export const preferValue = formAction('prefer-value', { own: { value: valueTyped } })
/** What taught it is one box, "kind:key". */
export const proposeLesson = formAction('propose-lesson', {
  own: {
    source: (form) => {
      const [kind, key = ''] = text(form, 'source').split(/:(.*)/s)
      return { kind, key }
    },
  },
})
/** The requirement's boxes lie under `change`. */
export const proposeRequirement = formAction('propose-change', {
  own: {
    change: (form) => ({
      kind: 'requirement',
      limit: text(form, 'change.limit'),
      authority: text(form, 'change.authority'),
      document: text(form, 'change.document'),
      clause: text(form, 'change.clause'),
      value: numberTyped(form, 'change.value'),
      relaxes: form.has('change.relaxes'),
    }),
  },
})
export const proposeSetAside = formAction('propose-set-aside')
export const proposeWithdrawal = formAction('propose-change', {
  own: { change: (form) => ({ kind: 'withdrawal', requirement: text(form, 'change.requirement') }) },
})
export const receiveLot = formAction('receive-lot')
export const refuseConcession = formAction('refuse-concession')
export const removeMember = formAction('remove-member')
export const requestConcession = formAction('request-concession')
/** How far it may depart: from a limit, or for names of which each has a line of its own. */
export const requestDeviation = formAction('request-deviation', {
  own: {
    departure: (form) =>
      text(form, 'departure.kind') === 'limit'
        ? {
            kind: 'limit',
            limit: text(form, 'departure.limit'),
            value: numberTyped(form, 'departure.value'),
          }
        : {
            kind: 'parts',
            way: text(form, 'departure.way'),
            parts: text(form, 'departure.parts')
              .split('\n')
              .map((name) => name.trim())
              .filter(Boolean),
          },
  },
})
export const restoreItem = formAction('restore-item')
export const retireLesson = formAction('retire-lesson')
export const returnAnswer = formAction('return-answer')
export const revokeCalendarAddress = formAction('revoke-calendar-address')
export const returnAllocation = formAction('return-allocation')
export const revokeMachineToken = formAction('revoke-machine-token')
export const setMoneyCeiling = formAction('set-money-ceiling')
export const signGate = formAction('sign-gate')
export const stateRequirement = formAction('state-requirement')
export const stateCompanyRule = previewedAction('state-company-rule')
export const takeUpItem = formAction('take-up-item')
export const takeCompanyRule = formAction('take-company-rule')
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
export const withdrawAlternative = formAction('withdraw-alternative')
export const withdrawCertificate = formAction('withdraw-certificate')
export const withdrawCompanyRule = previewedAction('withdraw-company-rule')
export const withdrawEvidence = formAction('withdraw-evidence')
export const withdrawInspection = formAction('withdraw-inspection')
export const withdrawLotTest = previewedAction('withdraw-lot-test')
export const withdrawPreference = formAction('withdraw-preference')
export const withdrawRecord = previewedAction('withdraw-record')
export const withdrawRequirement = formAction('withdraw-requirement')

import * as to from '@/app/addresses'
import { STAGES } from '@/shared/plan/stage'

/** The page of what an entry is about, where one can ask why it stands as it does. */
export function placeOf(code: string, command: string, payload: string): string | undefined {
  const recorded = JSON.parse(payload) as Record<string, unknown>
  const text = (key: string): string | undefined => {
    const value = recorded[key]
    return typeof value === 'string' && value ? value : undefined
  }
  const number = (key: string): number | undefined => {
    const value = recorded[key]
    return typeof value === 'number' ? value : undefined
  }
  const [parameter, limit, stage, lot, log, item] = [
    text('parameter'),
    text('limit'),
    text('stage'),
    text('lot'),
    text('log'),
    text('item') ?? text('itemKey'),
  ]
  switch (command) {
    case 'open-programme':
      return to.routeCardAddress(code)
    case 'revise-parameter':
      return parameter && to.parameterAddress(code, parameter)
    case 'state-requirement':
    case 'withdraw-requirement':
      return limit && to.limitAddress(code, limit)
    case 'sign-gate':
      return to.gateAddress(code, STAGES.find((known) => known === stage) ?? 'specification')
    case 'receive-lot':
      return to.lotAddress(code, text('code') ?? '')
    case 'open-log':
      return to.logAddress(code, text('code') ?? '')
    case 'create-machine-token':
    case 'revoke-machine-token':
      return `${to.logsAddress(code)}#machines`
    case 'record-inspection':
    case 'withdraw-inspection':
      return to.inspectionsAddress(code)
    case 'add-record':
    case 'withdraw-record':
      return to.recordKindAddress(code, text('kind') ?? '')
    case 'ask-action':
      return to.actionAddress(code, number('number') ?? '')
    case 'request-concession':
      return to.concessionAddress(code, number('number') ?? '')
    case 'open-option-study':
      return to.optionAddress(code, number('number') ?? '')
    case 'adopt-option':
      return to.optionAddress(code, number('study') ?? '')
    case 'propose-lesson':
    case 'decide-lesson':
    case 'retire-lesson':
      return to.lessonAddress(code, number('lesson') ?? 0)
    case 'invite-member':
    case 'remove-member':
    case 'hand-over-lead':
    case 'take-lead':
      return to.membersAddress(code)
  }
  if (number('action')) return to.actionAddress(code, number('action') ?? '')
  if (number('concession')) return to.concessionAddress(code, number('concession') ?? '')
  if (lot) return to.lotAddress(code, lot)
  if (log) return to.logAddress(code, log)
  return item && to.itemAddress(code, item)
}

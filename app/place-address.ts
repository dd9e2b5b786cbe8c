import * as to from '@/app/addresses'
import type { Place } from '@/shared/place'

/** The address of a place; `code` names the programme that it lies in, if it lies in one. */
export function placeAddress(code: string, place: Place): string {
  switch (place.kind) {
    case 'route card':
      return to.routeCardAddress(code)
    case 'members':
      return to.membersAddress(code)
    case 'machines':
      return `${to.logsAddress(code)}#machines`
    case 'inspections':
      return to.inspectionsAddress(code)
    case 'action':
      return to.actionAddress(code, place.number)
    case 'concession':
      return to.concessionAddress(code, place.number)
    case 'lesson':
      return to.lessonAddress(code, place.number)
    case 'study':
      return to.optionAddress(code, place.number)
    case 'item':
      return withPart(to.itemAddress(code, place.item), place.part)
    case 'gate':
      return to.gateAddress(code, place.stage)
    case 'parameter':
      return to.parameterAddress(code, place.parameter)
    case 'limit':
      return to.limitAddress(code, place.limit)
    case 'finding':
      return to.findingAddress(code, place.rule)
    case 'assembly':
      return to.assemblyAddress(code, place.serial)
    case 'lot':
      return to.lotAddress(code, place.lot)
    case 'log':
      return withPart(to.logAddress(code, place.log), place.part)
    case 'defect chart':
      return `${to.defectChartsAddress(code)}?chart=${place.chart}#signals`
    case 'records':
      return to.recordKindAddress(code, place.recordKind)
    case 'instruments':
      return to.instrumentsAddress()
    case 'desk':
      return to.deskAddress()
    case 'desk settings':
      return to.deskSettingsAddress()
    case 'person':
      return to.personAddress(place.personId)
  }
}

const withPart = (address: string, part: string | undefined): string =>
  part ? `${address}#${part}` : address

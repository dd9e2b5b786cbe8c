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
    case 'cost':
      return to.costAddress(code)
    case 'inspections':
      return to.inspectionsAddress(code)
    case 'rework':
      return to.reworkAddress(code)
    case 'action':
      return to.actionAddress(code, place.number)
    case 'concession':
      return to.concessionAddress(code, place.number)
    case 'lesson':
      return to.lessonAddress(code, place.number)
    case 'study':
      return to.optionAddress(code, place.number)
    case 'review':
      return to.reviewAddress(code, place.number)
    case 'nonconformity':
      return to.nonconformityAddress(code, place.number)
    case 'finding':
      return withPart(to.findingAddress(code, place.rule), place.part)
    case 'item':
      return withPart(to.itemAddress(code, place.item), place.part)
    case 'gate':
      return to.gateAddress(code, place.stage)
    case 'sign list':
      return to.signListAddress(code, place.stage)
    case 'notice':
      return to.changeNoticeAddress(code, place.number)
    case 'parameter':
      return withPart(to.parameterAddress(code, place.parameter), place.part)
    case 'limit':
      return to.limitAddress(code, place.limit)
    case 'assembly':
      return to.assemblyAddress(code, place.serial)
    case 'lot':
      return to.lotAddress(code, place.lot)
    case 'board':
      return to.boardAddress(code, place.evidence)
    case 'log':
      return withPart(to.logAddress(code, place.log), place.part)
    case 'defect chart':
      return `${to.defectChartsAddress(code)}?chart=${place.chart}#signals`
    case 'records':
      return to.recordKindAddress(code, place.recordKind)
    case 'record':
      return to.recordAddress(code, place.recordKind, place.record)
    case 'inspection':
      return to.inspectionAddress(code, place.inspection)
    case 'programme lines':
      return `${to.logsAddress(code)}#lines`
    case 'of the works':
      return to.worksSubjectAddress(place.subject)
    case 'works':
      return to.worksAddress()
    case 'line':
      return to.lineAddress(place.line)
    case 'machine':
      return place.log === undefined
        ? withPart(to.machineAddress(place.machine), place.part)
        : withPart(to.machineLogAddress(place.machine, place.log), place.part)
    case 'works lot':
      return to.worksLotAddress(place.supplier, place.lot)
    case 'part':
      return withPart(to.partAddress(place.part), place.section)
    case 'instruments':
      return to.instrumentsAddress()
    case 'lessons':
      return to.lessonsAddress()
    case 'desk':
      return to.deskAddress()
    case 'desk settings':
      return to.deskSettingsAddress()
    case 'person':
      return to.personAddress(place.personId)
    case 'trained person':
      return to.trainedPersonAddress(place.name)
  }
}

const withPart = (address: string, part: string | undefined): string =>
  part ? `${address}#${part}` : address

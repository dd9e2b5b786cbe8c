import {
  inspectionsAddress,
  instrumentsAddress,
  limitAddress,
  logsAddress,
  lotsAddress,
  parameterAddress,
  partsAddress,
  recordKindAddress,
  routeCardAddress,
  storeAddress,
} from '@/app/addresses'
import type { RecordPart } from '@/shared/rules/record-source'
import type { Readable } from '@/shared/rules/rule'

/** Where an input of a rule stands. */
export function placeOfInput(code: string, read: Readable): string {
  switch (read.source) {
    case 'parameter':
      return parameterAddress(code, read.key)
    case 'limit':
      return limitAddress(code, read.key)
    case 'today':
      return routeCardAddress(code)
    case 'records':
      return placeOfRecords(code, read.part)
  }
}

function placeOfRecords(code: string, part: RecordPart): string {
  switch (part.is) {
    case 'lots':
      return lotsAddress(code)
    case 'deliveries':
      return storeAddress()
    case 'inspections':
      return inspectionsAddress(code)
    case 'instruments':
      return instrumentsAddress()
    case 'parts':
      return partsAddress()
    case 'logs':
    case 'all logs':
      return logsAddress(code)
    case 'records':
      return recordKindAddress(code, part.of)
  }
}

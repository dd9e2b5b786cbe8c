import {
  inspectionsAddress,
  instrumentsAddress,
  limitAddress,
  logsAddress,
  lotsAddress,
  parameterAddress,
  recordKindAddress,
  recordsAddress,
  routeCardAddress,
} from '@/app/addresses'
import type { Readable } from '@/shared/rules/rule'

/** Where an input of a rule stands. */
export function placeOfInput(code: string, { source, key }: Readable): string {
  if (source === 'parameter') return parameterAddress(code, key)
  if (source === 'limit') return limitAddress(code, key)
  if (source === 'today') return routeCardAddress(code)
  const [kind, of] = key.split(':')
  if (kind === 'lots') return lotsAddress(code)
  if (kind === 'inspections') return inspectionsAddress(code)
  if (kind === 'instruments') return instrumentsAddress()
  if (kind === 'logs') return logsAddress(code)
  return of ? recordKindAddress(code, of) : recordsAddress(code)
}

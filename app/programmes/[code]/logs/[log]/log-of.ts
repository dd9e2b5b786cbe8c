import { addressPart } from '@/app/address-part'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Log } from '@/shared/records/log'
import { logOfCode } from '@/shared/records/every-log'

/** The log of a page’s address; undefined when the programme has none of that code. */
export const logOf = (view: ProgrammeView, key: string): Log | undefined => logNamed(view, addressPart(key))

/** The log of that code. */
export const logNamed = ({ state }: ProgrammeView, code: string): Log | undefined =>
  logOfCode(state.facts.records, code)

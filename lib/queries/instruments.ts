import { database } from '@/lib/db/client'

/** The whole register, what is due first. */
export const readInstruments = () =>
  database().instrument.findMany({ orderBy: [{ outOfUse: 'asc' }, { dueOn: 'asc' }, { tag: 'asc' }] })

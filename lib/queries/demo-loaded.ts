import { database } from '@/lib/db/client'
import { settings } from '@/lib/settings/settings'

/** The programmes of the demo, by their code. */
export const DEMO_CODES = ['LX-41', 'PX-12', 'VP-3'] as const

/** Whether this installation asks for the demo and holds its programmes; one statement, where it asks for it. */
export const demoIsLoaded = async (): Promise<boolean> =>
  settings().demo &&
  (await database().programme.count({ where: { code: { in: [...DEMO_CODES] } } })) === DEMO_CODES.length

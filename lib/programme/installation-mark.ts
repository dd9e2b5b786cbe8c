import { database } from '@/lib/db/client'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

/**
 * Entries of the installation's trail after which every programme's facts are what they were: of the people they hold
 * the names alone, and nobody new is named in a programme without an entry in its own trail.
 */
export const LEAVE_FACTS = [
  'add-person',
  'bind-identity',
  'change-own-password',
  'choose-digest',
  'create-calendar-address',
  'disable-person',
  'enable-person',
  'end-delegation',
  'first-administrator',
  'name-delegate',
  'renew-first-administrator',
  'reset-password',
  'revoke-calendar-address',
]

/** The hash of the newest entry in the installation's trail that programmes' facts may rest on; '' when there is none. */
export async function installationMark(): Promise<string> {
  const [row] = await database().$queryRaw<{ hash: string }[]>`
    SELECT "hash" FROM "TrailEntry"
    WHERE "trailId" = ${INSTALLATION_TRAIL} AND "command" <> ALL(${LEAVE_FACTS})
    ORDER BY "seq" DESC LIMIT 1`
  return row?.hash ?? ''
}

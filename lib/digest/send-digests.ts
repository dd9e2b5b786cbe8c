import { database } from '@/lib/db/client'
import { whileAlone } from '@/lib/db/while-alone'
import { digestText } from '@/lib/digest/digest-text'
import { mailServer } from '@/lib/digest/mail-server'
import { log } from '@/lib/log/log'
import { deskLineKey, deskOf } from '@/lib/queries/desk'
import { settings } from '@/lib/settings/settings'
import { dateInZone } from '@/shared/quantity/works-clock'

/** The number that instances lock on, so that one of them sends and nobody is told twice. */
const DIGEST_LOCK = 72_707_372

/** What came of one round. */
export interface DigestRound {
  readonly sent: number
  /** To be tried again. */
  readonly failed: number
}

/**
 * Tells everybody who wants it, once a day of the works, what came onto their desk since they were told last.
 * Does nothing where no mail server is set, or while another instance is at it.
 */
export async function sendDigests(now = new Date()): Promise<DigestRound> {
  const { mail, url } = settings()
  if (!mail) return { sent: 0, failed: 0 }
  const round = await whileAlone(DIGEST_LOCK, async () => {
    const today = dateInZone(now, mail.timeZone)
    const server = mailServer(mail)
    let [sent, failed] = [0, 0]
    try {
      for (const reader of await readersDue(today)) {
        try {
          const { fresh, before, keys } = await newsFor(reader, now)
          if (fresh.length > 0) {
            const message = digestText(reader.name, fresh, before, url)
            await server.sendMail({
              from: mail.from,
              to: { name: reader.name, address: reader.email },
              ...message,
            })
            sent++
          }
          await noteSent(reader.id, today, keys)
        } catch (error) {
          failed++
          log.error('A daily mail could not be sent.', { person: reader.id, error })
        }
      }
    } finally {
      server.close()
    }
    return { sent, failed }
  })
  return round ?? { sent: 0, failed: 0 }
}

interface Reader {
  readonly id: string
  readonly name: string
  readonly email: string
}

/** Members who want the mail, can sign in, and were not told today. */
const readersDue = (today: string): Promise<Reader[]> =>
  database().$queryRaw<Reader[]>`
    SELECT p."id"::text, p."name", p."email" FROM "Person" p
    JOIN "DigestWish" w ON w."personId" = p."id" AND w."wanted"
    LEFT JOIN "DigestSent" s ON s."personId" = p."id"
    WHERE p."disabledAt" IS NULL AND NOT p."auditor" AND NOT p."administrator"
      AND (s."sentOn" IS NULL OR s."sentOn" < ${today})
    ORDER BY p."id"`

async function newsFor({ id, name }: Reader, now: Date) {
  const desk = await deskOf({ personId: id, name, auditor: false, administrator: false }, now)
  const lines = desk.lines.filter(({ bearing }) => bearing !== 'I wait')
  const known = new Set((await database().digestSent.findUnique({ where: { personId: id } }))?.keys)
  const fresh = lines.filter((line) => !known.has(deskLineKey(line)))
  return { fresh, before: lines.length - fresh.length, keys: lines.map(deskLineKey) }
}

async function noteSent(personId: string, sentOn: string, keys: string[]): Promise<void> {
  await database().digestSent.upsert({
    where: { personId },
    create: { personId, sentOn, keys },
    update: { sentOn, keys },
  })
}

import { createHmac, timingSafeEqual } from 'node:crypto'

/** Why an upload was refused, and what was typed beside the file. */
export interface UploadAnswer {
  readonly refused?: string
  readonly kind?: string
  readonly note?: string
}

const GOOD_FOR_MS = 10 * 60 * 1000
const LONGEST = 500

/**
 * A refusal as a piece of an address, for a form sent without scripts: sealed,
 * so that nobody else can put words into a page's mouth by a link, and soon void.
 */
export function sealUploadAnswer(
  { refused, kind, note }: UploadAnswer,
  secret: string,
  nowMs: number,
): string {
  const cut = (text: string | undefined) => text?.slice(0, LONGEST)
  const body = { refused: cut(refused), kind: cut(kind), note: cut(note), until: nowMs + GOOD_FOR_MS }
  const text = Buffer.from(JSON.stringify(body)).toString('base64url')
  return `${text}.${sealOn(text, secret).toString('base64url')}`
}

/** What a sealed answer says; nothing when it was not sealed here, or is old. */
export function openUploadAnswer(
  sealed: string | undefined,
  secret: string,
  nowMs = Date.now(),
): UploadAnswer {
  const [text = '', seal = ''] = sealed?.split('.') ?? []
  const [given, wanted] = [Buffer.from(seal, 'base64url'), sealOn(text, secret)]
  if (given.length !== wanted.length || !timingSafeEqual(given, wanted)) return {}
  const { until, ...answer } = JSON.parse(Buffer.from(text, 'base64url').toString()) as UploadAnswer & {
    until: number
  }
  return until >= nowMs ? answer : {}
}

const sealOn = (text: string, secret: string): Buffer => createHmac('sha256', secret).update(text).digest()

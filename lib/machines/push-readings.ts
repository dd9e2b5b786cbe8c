import type { z } from 'zod'
import { perform } from '@/lib/commands/perform'
import { logBehind, type MachineBehind } from '@/lib/queries/machine-tokens'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { findCharacteristic } from '@/shared/records/characteristics'
import { pushEnvelope, readingSchema, readingsOf } from './push-schema'

/** What came of a call: stored, or why not, in a sentence and by the path of what is wrong. */
export type Pushed =
  | { readonly stored: { readonly log: string; readonly readings: number; readonly trailEntry: number } }
  | {
      readonly status: 400 | 404 | 409
      readonly message: string
      readonly problems?: Readonly<Record<string, string>>
    }

const MAX_PROBLEMS = 50

/**
 * Takes a machine's readings into its log, all or none, as the person who let the machine in.
 * The same call sent twice, or another with the same key, is stored once.
 */
export async function pushReadings(
  machine: MachineBehind,
  body: string,
  key: string | null,
): Promise<Pushed> {
  const envelope = pushEnvelope.safeParse(parsedJson(body))
  if (!envelope.success) return unreadable(envelope.error)
  const { log, readings: sent } = envelope.data
  const known = await logBehind(machine, log)
  const characteristic = known && findCharacteristic(known.characteristic)
  if (!known || !characteristic)
    return {
      status: 404,
      message: `There is no log ${log} of ${machine.subject.kind} ${machine.subject.code}.`,
    }
  const schema = readingSchema(characteristic)
  const problems: Record<string, string> = {}
  sent.forEach((reading, index) => {
    if (Object.keys(problems).length >= MAX_PROBLEMS) return
    const parsed = schema.safeParse(reading)
    if (!parsed.success) Object.assign(problems, problemsOf(parsed.error, `readings.${index}.`))
  })
  const [first] = Object.entries(problems)
  if (first) return { status: 400, message: `${first[0]}: ${first[1]} Nothing was stored.`, problems }

  const outcome = await perform(
    machine.createdById,
    'add-readings',
    {
      machine: known.machine,
      log: known.log,
      readings: readingsOf(sent),
      file: null,
      mapping: null,
    },
    { key: callNumber(machine, key ?? body) },
  )
  if (!outcome.ok) return { status: 409, message: outcome.message, problems: outcome.fields }
  return { stored: { log, readings: sent.length, trailEntry: outcome.seq } }
}

function parsedJson(body: string): unknown {
  try {
    return JSON.parse(body)
  } catch {
    return undefined
  }
}

function unreadable(error: z.ZodError): Pushed {
  const problems = problemsOf(error, '')
  return { status: 400, message: `${Object.values(problems)[0]} Nothing was stored.`, problems }
}

const problemsOf = (error: z.ZodError, before: string): Record<string, string> =>
  Object.fromEntries(
    error.issues.map(({ path, message }) => [`${before}${path.map(String).join('.')}`, message]),
  )

/** A call's number as the door counts them (a UUID, version 8 of RFC 9562), from its key or its content. */
function callNumber({ name, trailId }: MachineBehind, said: string): string {
  const hex = nativeSha256(`machine call\n${trailId}\n${name}\n${said}`)
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `8${hex.slice(13, 16)}`,
    `a${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join('-')
}

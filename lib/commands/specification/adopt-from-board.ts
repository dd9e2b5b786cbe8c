import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { loadArchive } from '@/lib/commands/evidence/load-archive'
import { id, jsonValue, line, programmeCode, reason, wholeNumber } from '@/lib/commands/inputs'
import { checkedValue, parameterNamed } from '@/lib/commands/specification/checked-value'
import { currentValues } from '@/lib/commands/specification/current-values'
import { writeRevisions } from '@/lib/commands/specification/write-revisions'
import type { Parameter } from '@/shared/plan/parameter'
import { Refused } from '@/shared/refused'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'

/** More values than board files say anything of. */
const MOST = 40

const adopted = z.strictObject({
  parameter: line('The parameter'),
  value: jsonValue,
  seen: wholeNumber('The revision', 0, 1_000_000),
})

/**
 * Gives several parameters the values that the files of a board have, for one
 * reason and in one transaction: a revision and an entry each, as if it had been
 * revised alone. `seen` is the revision of each that the person had before them
 * (0 for none). Where any of them cannot be adopted, none is.
 */
export const adoptFromBoard = defineCommand({
  name: 'adopt-from-board',
  input: z.strictObject({
    programme: programmeCode,
    evidence: id,
    values: z
      .array(adopted)
      .min(1, 'Tick the values that you adopt.')
      .max(MOST, `At most ${MOST} values are adopted at once.`)
      .refine((values) => new Set(values.map(({ parameter }) => parameter)).size === values.length, {
        error: 'A value is named twice. Load the page again.',
      }),
    reason,
  }),
  async load(tx, { evidence, values }, { programmeId }) {
    return {
      archive: await loadArchive(tx, programmeId, evidence),
      asked: values.map((value) => ({ ...value, parameter: parameterNamed(value.parameter) })),
      current: await currentValues(tx, programmeId),
    }
  },
  subject: ({ asked }) => ({ parameters: asked.map(({ parameter }) => parameter) }),
  decide({ archive, asked, current }, { reason: why }) {
    const tried = asked.map((value) => revisionOf(value, current.get(value.parameter.key)))
    const faults = tried.flatMap((each) => ('fault' in each ? [each] : []))
    if (faults.length > 0) throw nothingAdopted(faults, asked.length)
    const revisions = tried.flatMap((each) => ('fault' in each ? [] : [each]))
    return {
      change: revisions.map(({ parameter, number, value }) => ({ parameter: parameter.key, number, value, reason: why })), // prettier-ignore
      acts: revisions.map(({ parameter, number, value, before }) => ({
        command: 'revise-parameter' as const,
        record: {
          parameter: parameter.key,
          label: parameter.label,
          revision: number,
          value,
          before,
          reason: why,
          evidence: archive.id,
        },
      })),
      record: {
        evidence: archive.id,
        fileName: archive.fileName ?? '',
        sha256: archive.sha256,
        values: revisions.map(({ parameter, number }) => ({ parameter: parameter.key, revision: number })),
        reason: why,
      },
      result: { adopted: revisions.length },
    }
  },
  async apply(tx, revisions, { programmeId, actor, now }) {
    await writeRevisions(tx, revisions, { programmeId, authorId: actor.personId, at: now })
  },
})

interface Asked {
  readonly parameter: Parameter
  readonly value: JsonValue
  readonly seen: number
}
interface Current {
  readonly number: number
  readonly value: JsonValue
}
interface Revision {
  readonly parameter: Parameter
  readonly number: number
  readonly value: JsonValue
  readonly before: JsonValue
}
interface Fault {
  readonly parameter: Parameter
  readonly fault: string
}

/** The revision that a value becomes, or why it cannot. */
function revisionOf({ parameter, value, seen }: Asked, current: Current | undefined): Revision | Fault {
  if ((current?.number ?? 0) !== seen)
    return { parameter, fault: 'It was revised since you opened the page. Load the page again and read it.' }
  try {
    const clean = checkedValue(parameter, value)
    if (current && canonicalJson(current.value) === canonicalJson(clean))
      return { parameter, fault: 'This is the value it has already.' }
    return { parameter, number: seen + 1, value: clean, before: current?.value ?? null }
  } catch (error) {
    if (error instanceof Refused) return { parameter, fault: error.message }
    throw error
  }
}

const nothingAdopted = (faults: readonly Fault[], asked: number): Refused =>
  new Refused(
    `Nothing was adopted, for ${faults.length} of the ${asked} cannot be: ${faults.map(({ parameter }) => parameter.label).join(', ')}. What stands in the way is said beside each.`,
    Object.fromEntries(faults.map(({ parameter, fault }) => [`values.${parameter.key}`, fault])),
  )

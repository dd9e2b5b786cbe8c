import { z } from 'zod'
import { loadNoticeStanding } from '@/lib/commands/changes/load-notice'
import { defineCommand, type Act } from '@/lib/commands/command'
import { programmeCode, reason, sha256Hex, wholeNumber } from '@/lib/commands/inputs'
import { limitOfDemand } from '@/lib/commands/specification/checked-requirement'
import { parameterNamed } from '@/lib/commands/specification/checked-value'
import { writeRevisions } from '@/lib/commands/specification/write-revisions'
import type { Transaction } from '@/lib/db/transaction'
import type { NoticeChange, ProposedChange } from '@/shared/gate/proposed-change'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { governingRequirement } from '@/shared/plan/requirement'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/**
 * Makes every change of a notice at once, in one transaction: each recorded as
 * if it had been made alone, by the name of who proposed it, with the notice it
 * came by. `digest` is what the departments agreed to.
 */
export const adoptChangeNotice = defineCommand({
  name: 'adopt-change-notice',
  input: z.strictObject({
    programme: programmeCode,
    notice: wholeNumber('The change notice', 1, 1_000_000),
    digest: sha256Hex,
    reason,
  }),
  load: (tx, { notice }, context) => loadNoticeStanding(tx, context, notice),
  subject: ({ standing }) => standing,
  decide({ notice, standing, state }, { digest, reason: why }, { newId }) {
    if (standing.digest !== digest)
      throw new Refused('The notice, or what it would turn, changed since you opened it. Read it again.')
    const made = notice.changes.map((change) => madeOf(notice.number, change, state, newId))
    return {
      change: { number: notice.number, why, made },
      acts: made.map(({ act }) => act),
      record: {
        notice: notice.number,
        title: notice.title,
        reason: why,
        digest,
        changes: notice.changes.map(({ change }) => ({ ...change })),
        answers: standing.answers.map(({ department, answer }) => ({
          department,
          person: answer?.personName ?? '',
          agrees: answer?.agrees ?? false,
        })),
      },
    }
  },
  async apply(tx, { number, why, made }, { programmeId, actor, now }) {
    for (const change of made) await change.write(tx, programmeId, now)
    await tx.changeNotice.update({
      where: { programmeId_number: { programmeId, number } },
      data: { disposition: 'adopted', dispositionWhy: why, disposedById: actor.personId, disposedAt: now },
    })
  },
})

/** One change as it is recorded and written. */
interface Made {
  readonly act: Act
  readonly write: (tx: Transaction, programmeId: string, at: string) => Promise<unknown>
}

function madeOf(notice: number, entry: NoticeChange, state: ProgrammeState, newId: () => string): Made {
  const { change } = entry
  switch (change.kind) {
    case 'value':
      return revisionMade(notice, entry, change, state)
    case 'requirement':
      return requirementMade(notice, entry, change, newId())
    case 'withdrawal':
      return withdrawalMade(notice, entry, change)
  }
}

type Of<Kind extends ProposedChange['kind']> = Extract<ProposedChange, { kind: Kind }>

function revisionMade(
  notice: number,
  { reason: why, authorId }: NoticeChange,
  { parameter: key, value, seen }: Of<'value'>,
  state: ProgrammeState,
): Made {
  const before = (state.revisions.get(key)?.value ?? null) as JsonValue
  const { label } = parameterNamed(key)
  const number = seen + 1
  return {
    act: {
      command: 'revise-parameter',
      record: {
        parameter: key,
        label,
        revision: number,
        value,
        before,
        reason: why,
        notice,
        author: authorId,
      },
    },
    write: (tx, programmeId, at) =>
      writeRevisions(tx, [{ parameter: key, number, value, reason: why }], {
        programmeId,
        authorId,
        at,
        notice,
      }),
  }
}

function requirementMade(
  notice: number,
  { reason: why, authorId }: NoticeChange,
  { kind: _, ...demand }: Of<'requirement'>,
  id: string,
): Made {
  const limit = limitOfDemand(demand)
  const requirement = { ...demand, id, reason: why }
  const { relaxed } = governingRequirement(limit, [{ ...requirement, lesson: null }])
  return {
    act: {
      command: 'state-requirement',
      record: {
        ...requirement,
        label: limit.label,
        unit: limit.unit,
        looserThanDefault: relaxed,
        notice,
        author: authorId,
      },
    },
    write: (tx, programmeId, at) =>
      tx.requirement.create({ data: { ...requirement, programmeId, authorId, at, notice } }),
  }
}

function withdrawalMade(
  notice: number,
  { reason: why, authorId }: NoticeChange,
  { requirement, limit, authority, document, value }: Of<'withdrawal'>,
): Made {
  return {
    act: {
      command: 'withdraw-requirement',
      record: { requirement, limit, authority, document, value, reason: why, notice, author: authorId },
    },
    write: (tx, _programmeId, at) =>
      tx.requirement.update({
        where: { id: requirement },
        data: { withdrawnById: authorId, withdrawnAt: at, withdrawnNotice: notice },
      }),
  }
}

import { Prisma } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { currentValues } from '@/lib/commands/specification/current-values'
import { writeRevisions } from '@/lib/commands/specification/write-revisions'
import type { Actor } from '@/shared/actor'
import { findLimit, findParameter, STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { takenOverFrom } from '@/shared/plan/given-reasons'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** What of a programme another may start with. */
type Source = Awaited<ReturnType<typeof loadSource>>

/** The programme that is named, to those who may read it; to anybody else it is as if it did not exist. */
export async function loadSource(tx: Transaction, code: string, actor: Actor) {
  const programme = await tx.programme.findUnique({ where: { code }, select: { id: true, leadId: true } })
  const member = programme
    ? await tx.membership.findFirst({
        where: { programmeId: programme.id, personId: actor.personId },
        select: { personId: true },
      })
    : null
  if (!programme || (programme.leadId !== actor.personId && !member)) {
    const message = `There is no programme ${code} that you may read. Leave the box empty, or choose one of yours.`
    throw new Refused(message, { from: message })
  }
  const own = { where: { programmeId: programme.id } }
  const head = await tx.trail.findUnique({
    where: { id: programme.id },
    select: { seq: true, headHash: true },
  })
  return {
    code,
    head: { seq: head?.seq ?? 0, hash: head?.headHash ?? '' },
    values: await currentValues(tx, programme.id),
    items: await tx.planItem.findMany({ ...own, orderBy: { position: 'asc' } }),
    requirements: await tx.requirement.findMany({
      where: {
        programmeId: programme.id,
        withdrawnAt: null,
        lesson: { equals: Prisma.DbNull },
        companyRule: null,
      },
      orderBy: [{ at: 'asc' }, { id: 'asc' }],
    }),
  }
}

/** What the programme that is opened takes over, as its entry records it. */
export interface TakenOver {
  readonly from: string
  /** Where the other's trail stood. */
  readonly head: { readonly seq: number; readonly hash: string }
  readonly values: readonly {
    readonly parameter: string
    readonly value: JsonValue
    readonly reason: string
  }[]
  readonly requirements: readonly {
    readonly id: string
    readonly limit: string
    readonly authority: string
    readonly document: string
    readonly clause: string
    readonly value: number
    readonly relaxes: boolean
    readonly reason: string
  }[]
  /** Items that the other added to its plan itself. */
  readonly items: readonly { readonly key: string; readonly stage: string; readonly added: JsonValue }[]
  /** Items that the other set aside, proposed here: quality has not agreed to them in this programme. */
  readonly setAside: readonly { readonly key: string; readonly reason: string }[]
  /** Values that this version would not take any more, by parameter. */
  readonly left: readonly string[]
}

/**
 * Values, stated limits and plan; no evidence, approval or record, which belong
 * to the board they were made on. What lessons and company rules
 * brought the other comes by themselves. Values given at the opening are not taken over.
 */
export function takenOver(source: Source, given: ReadonlySet<string>, newId: () => string): TakenOver {
  const values = [...source.values].filter(([key]) => !given.has(key))
  const fits = ([key, { value }]: (typeof values)[number]): boolean =>
    findParameter(key)?.schema.safeParse(value).success ?? false
  const standard = new Set<string>(STANDARD_PLAN.map(({ key }) => key))
  return {
    from: source.code,
    head: source.head,
    values: values.filter(fits).map(([parameter, { value, number }]) => ({
      parameter,
      value,
      reason: takenOverFrom(source.code, number),
    })),
    requirements: source.requirements
      .filter(({ limit }) => findLimit(limit))
      .map(({ limit, authority, document, clause, value, relaxes, reason }) => ({
        id: newId(),
        limit,
        authority,
        document,
        clause,
        value,
        relaxes,
        reason: `${takenOverFrom(source.code)} ${reason}`,
      })),
    items: source.items
      .filter(({ added, lesson }) => added !== null && lesson === null)
      .map(({ stage, added }) => ({ key: newId(), stage, added: added as JsonValue })),
    setAside: source.items
      .filter(({ key }) => standard.has(key))
      .flatMap(({ key, setAside }) =>
        isAgreed(setAside) ? [{ key, reason: `${takenOverFrom(source.code)} ${setAside.reason}` }] : [],
      ),
    left: values.filter((value) => !fits(value)).map(([key]) => key),
  }
}

const isAgreed = (setAside: unknown): setAside is { readonly reason: string } =>
  typeof setAside === 'object' &&
  setAside !== null &&
  'agreed' in setAside &&
  setAside.agreed !== null &&
  'reason' in setAside

interface Written {
  readonly programmeId: string
  readonly proposal: object
  readonly actor: Actor
  readonly now: string
  /** Items that lessons brought, which stand before those taken over. */
  readonly after: number
}

export async function writeTakenOver(
  tx: Transaction,
  { values, requirements, items, setAside }: TakenOver,
  { programmeId, proposal, actor, now, after }: Written,
): Promise<void> {
  await writeRevisions(
    tx,
    values.map(({ parameter, value, reason }) => ({ parameter, number: 1, value, reason })),
    { programmeId, authorId: actor.personId, at: now },
  )
  await tx.requirement.createMany({
    data: requirements.map((stated) => ({ ...stated, programmeId, authorId: actor.personId, at: now })),
  })
  await tx.planItem.createMany({
    data: items.map(({ key, stage, added }, index) => ({
      programmeId,
      key,
      stage,
      position: STANDARD_PLAN.length + after + index,
      added: added as object,
    })),
  })
  for (const { key, reason } of setAside)
    await tx.planItem.update({
      where: { programmeId_key: { programmeId, key } },
      data: { setAside: { reason, ...proposal } },
    })
}

import { randomUUID } from 'node:crypto'
import type { Transaction } from '@/lib/db/transaction'
import { INSTALLATION_TRAIL, lockTrail, openTrail } from '@/lib/trail/append-entry'
import { faceOf, type CommandName } from '@/shared/commands/all-faces'
import { Refused } from '@/shared/refused'
import type { TrailHead } from '@/shared/trail/entry'
import { isSingular, worksSubjectName, type TrailKind, type WorksSubject } from '@/shared/works/works-kind'

/** What a command is about, locked, with the trail that its entry goes into. */
export interface LockedSubject {
  readonly kind: TrailKind
  /** The id that its rows and its trail have; '' for the installation. */
  readonly id: string
  readonly code: string
  /** The trail that is locked: where the command opens something, the installation's, on which that is serialised. */
  readonly head: TrailHead
  readonly opens: boolean
}

/**
 * Locks what the command is about: the programme it names, something of the works, or the installation.
 * What opens a trail of its own is serialised on the installation.
 */
export async function lockSubject(
  tx: Transaction,
  name: CommandName,
  input: unknown,
): Promise<LockedSubject> {
  const rights = faceOf(name).may
  if (rights.opens) {
    const head = await lockInstallation(tx)
    return { kind: rights.opens, id: randomUUID(), code: '', head, opens: true }
  }
  if (rights.scope === 'installation' || rights.scope === 'self')
    return { kind: 'installation', id: '', code: '', head: await lockInstallation(tx), opens: false }
  const { programme } = input as { programme?: string }
  const works = worksSubjectIn(name, input)
  if (works && programme === undefined) return lockWorks(tx, works)
  if (programme === undefined) throw new Refused('Say of which programme, or of what of the works.')
  const found = await tx.programme.findUnique({ where: { code: programme }, select: { id: true } })
  const head = found && (await lockTrail(tx, found.id))
  if (!found || !head) throw new Refused(`There is no programme ${programme}.`)
  return { kind: 'programme', id: found.id, code: programme, head, opens: false }
}

async function lockInstallation(tx: Transaction): Promise<TrailHead> {
  await openTrail(tx, INSTALLATION_TRAIL)
  const head = await lockTrail(tx, INSTALLATION_TRAIL)
  if (!head) throw new Error('The installation has no trail.')
  return head
}

async function lockWorks(tx: Transaction, works: WorksSubject): Promise<LockedSubject> {
  const found = await tx.trailSubject.findUnique({
    where: { kind_code: { kind: works.kind, code: works.code } },
    select: { id: true },
  })
  // The two that need no opening have no trail before their first entry.
  if (found && isSingular(works.kind)) await openTrail(tx, found.id)
  const head = found && (await lockTrail(tx, found.id))
  if (!found || !head) throw new Refused(`The works have no ${worksSubjectName(works)}.`)
  return { ...works, id: found.id, head, opens: false }
}

/** The thing of the works that the input names: by the member of its kind, or as `works` where it may be of several kinds. */
function worksSubjectIn(name: CommandName, input: unknown): WorksSubject | undefined {
  const { of, worksToo } = faceOf(name).may
  const asked = input as Record<string, unknown>
  if (of !== undefined) return { kind: of, code: isSingular(of) ? of : String(asked[of]) }
  const works = worksToo && (asked['works'] as WorksSubject | undefined)
  if (!works) return undefined
  if (!worksToo.includes(works.kind)) throw new Refused('This is not kept there.')
  return { kind: works.kind, code: isSingular(works.kind) ? works.kind : works.code }
}

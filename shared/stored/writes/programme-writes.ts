import { STAGES } from '@/shared/plan/stage'
import { LESSONS_DOCUMENT } from '@/shared/plan/lessons-document'
import { GIVEN_AT_OPENING } from '@/shared/plan/given-reasons'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { ExpectedRows } from '../expected-rows'
import { saidList, saidObject, without, type Said, type SpokenEntry, type Writes } from '../spoken-entry'
import { bringCompanyRules } from './company-rule-writes'
import { insertRequirement, insertRevision } from './stated-rows'

const openProgramme: Writes = (entry, rows) => {
  const { at, actorId, said } = entry
  rows.insert('Programme', {
    id: said['programmeId'],
    code: said['code'],
    title: said['title'],
    leadId: actorId,
    openedById: actorId,
    openedAt: at,
  })
  rows.insert('Membership', { personId: actorId, department: said['department'], since: at })
  for (const [parameter, value] of Object.entries(saidObject(said['values'])))
    insertRevision(rows, { parameter, number: 1, value, reason: GIVEN_AT_OPENING }, { authorId: actorId, at })
  const planned = openPlan(said, rows)
  const brought = bringLessons(entry, rows, planned)
  takeOver(entry, rows, planned === undefined ? undefined : planned + brought)
  bringCompanyRules(said, rows, at)
  for (const { parameter, value, reason } of saidList(said['preferences']))
    insertRevision(rows, { parameter, number: 1, value, reason }, { authorId: actorId, at })
}

/** Values, limits and plan that another programme gave it. */
function takeOver(
  { at, actorId, actorName, said }: SpokenEntry,
  rows: ExpectedRows,
  planned: number | undefined,
) {
  const taken = saidObject(said['takenOver'])
  const by = { authorId: actorId, at }
  for (const value of saidList(taken['values'])) insertRevision(rows, { ...value, number: 1 }, by)
  for (const requirement of saidList(taken['requirements'])) insertRequirement(rows, requirement, by)
  for (const [index, { key, stage, added }] of saidList(taken['items']).entries())
    rows.insert('PlanItem', {
      key,
      stage,
      position: planned === undefined ? undefined : planned + index,
      added,
      setAside: null,
      lesson: null,
    })
  for (const { key, reason } of saidList(taken['setAside']))
    rows.change(
      'PlanItem',
      { key },
      {
        setAside: {
          reason: reason ?? null,
          proposedById: actorId,
          proposedByName: actorName,
          proposedAt: at,
          agreed: null,
        },
      },
    )
}

/** The standard plan's items; how many they are, undefined where an older entry does not list them. */
function openPlan(said: Said, rows: ExpectedRows): number | undefined {
  if (said['plan'] === undefined) {
    rows.mayBeUnlisted('PlanItem', { added: null, setAside: null, lesson: null })
    return undefined
  }
  const plan = saidObject(said['plan'])
  let position = 0
  for (const stage of STAGES) {
    const keys = plan[stage]
    for (const key of Array.isArray(keys) ? (keys as readonly JsonValue[]) : [])
      rows.insert('PlanItem', { key, stage, position: position++, added: null, setAside: null, lesson: null })
  }
  return position
}

/** Items and company limits that lessons of other programmes brought; answers how many items. */
function bringLessons({ at, said }: SpokenEntry, rows: ExpectedRows, planned: number | undefined): number {
  let added = 0
  for (const brought of saidList(said['lessons'])) {
    if (brought['addedItem'] !== undefined) {
      rows.insert('PlanItem', {
        key: brought['addedItem'],
        stage: brought['stage'],
        position: planned === undefined ? undefined : planned + added,
        added: without(brought, 'lesson', 'from', 'brings', 'addedItem'),
        setAside: null,
        lesson: brought['from'] ?? { ...lessonOfOlder(brought['lesson']), inAsks: true },
      })
      added++
    } else {
      const { requirement: id, limit, value, reason } = brought
      insertRequirement(
        rows,
        {
          id,
          limit,
          value,
          reason,
          authority: brought['authority'] ?? 'company',
          document: brought['document'] ?? LESSONS_DOCUMENT,
          clause: brought['clause'] ?? brought['lesson'],
          relaxes: brought['relaxes'] ?? false,
          lesson: brought['from'] ?? lessonOfOlder(brought['lesson']),
        },
        { authorId: brought['authorId'], at },
      )
    }
  }
  return added
}

/** An older entry names a lesson in words: "LX-41, lesson 2". */
function lessonOfOlder(name: JsonValue | undefined): { programme: string; number: number } {
  const [, programme = '', number] = /^(.+), lesson (\d+)$/.exec(String(name)) ?? []
  return { programme, number: Number(number) }
}

const leadPasses: Writes = ({ trailId, said }, rows) =>
  rows.change('Programme', { id: trailId }, { leadId: said['personId'] })

const inviteMember: Writes = ({ at, said }, rows) =>
  rows.insert('Membership', { personId: said['personId'], department: said['department'], since: at })

const removeMember: Writes = ({ said }, rows) =>
  rows.remove('Membership', { personId: said['personId'], department: said['department'] })

const addItem: Writes = ({ said }, rows) =>
  rows.insert('PlanItem', {
    key: said['item'],
    stage: said['stage'],
    position: said['position'],
    added: without(said, 'item', 'position'),
    setAside: null,
    lesson: null,
  })

const takeUpItem: Writes = ({ said }, rows) =>
  rows.insert('PlanItem', {
    key: said['item'],
    stage: said['stage'],
    position: said['position'],
    added: null,
    setAside: null,
    lesson: null,
  })

const proposeSetAside: Writes = ({ at, actorId, actorName, said }, rows) =>
  rows.change(
    'PlanItem',
    { key: said['item'] },
    {
      setAside: {
        reason: said['reason'] ?? null,
        proposedById: actorId,
        proposedByName: actorName,
        proposedAt: at,
        agreed: null,
      },
    },
  )

const decideSetAside: Writes = ({ at, actorId, actorName, said }, rows) => {
  const item = { key: said['item'] }
  const proposal = saidObject(rows.valueOf('PlanItem', item, 'setAside'))
  const agreed = { byId: actorId, byName: actorName, at }
  rows.change('PlanItem', item, {
    setAside: said['agree'] === true ? ({ ...proposal, agreed } as JsonValue) : null,
  })
}

const restoreItem: Writes = ({ said }, rows) =>
  rows.change('PlanItem', { key: said['item'] }, { setAside: null })

/** What is written of a programme, its members and its plan. */
export const PROGRAMME_WRITES = {
  'open-programme': openProgramme,
  'hand-over-lead': leadPasses,
  'take-lead': leadPasses,
  'invite-member': inviteMember,
  'remove-member': removeMember,
  'add-item': addItem,
  'take-up-item': takeUpItem,
  'propose-set-aside': proposeSetAside,
  'decide-set-aside': decideSetAside,
  'restore-item': restoreItem,
} as const

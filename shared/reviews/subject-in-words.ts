import { findItem, findParameter, findRule } from '@/shared/catalogue/standard-plan'
import type { Place } from '@/shared/place'
import { ownMember } from '@/shared/own-member'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { jointOfKey, type Subject } from './subject'

/** What a subject is called; `name` is what was recorded of one that no catalogue holds. */
export function subjectInWords({ kind, key }: Subject, name?: string): string {
  switch (kind) {
    case 'item':
      return findItem(key)?.title ?? name ?? key
    case 'finding':
      return findRule(key)?.title ?? name ?? key
    case 'parameter':
      return findParameter(key)?.label ?? name ?? key
    case 'set-aside':
      return `${findItem(key)?.title ?? name ?? key}, proposed as not applicable`
    case 'action':
      return `Action ${key}`
    case 'concession':
      return `Concession ${key}`
    case 'study':
      return `Option study ${key}`
    case 'lot':
      return `Lot ${key}`
    case 'log':
      return `Log ${key}`
    case 'joint': {
      const joint = jointOfKey(key)
      return joint ? `Joint ${joint.joint} of ${joint.assembly}` : key
    }
    case 'record':
      return ownMember(RECORD_KINDS, recordOfKey(key).kind)?.label ?? name ?? key
    case 'comment':
      return `Comment ${key}`
    case 'nonconformity':
      return `Nonconformity ${key}`
    case 'point':
      return name ?? `Point ${key}`
  }
}

/** A record's key: its kind and its id. */
export function recordOfKey(key: string): { kind: string; id: string } {
  const [kind = '', id = ''] = key.split('/')
  return { kind, id }
}

/** Where a subject is shown; undefined for what has no page of its own. */
export function placeOfSubject({ kind, key }: Subject): Place | undefined {
  switch (kind) {
    case 'item':
    case 'set-aside':
      return { kind: 'item', item: key }
    case 'finding':
      return { kind: 'finding', rule: key }
    case 'parameter':
      return { kind: 'parameter', parameter: key }
    case 'action':
    case 'concession':
    case 'study':
    case 'nonconformity':
      return { kind, number: Number(key) }
    case 'lot':
      return { kind: 'lot', lot: key }
    case 'log':
      return { kind: 'log', log: key }
    case 'joint':
      return { kind: 'rework' }
    case 'record':
      return { kind: 'records', recordKind: recordOfKey(key).kind }
    case 'comment':
    case 'point':
      return undefined
  }
}

/** The comments beside a subject. */
export function commentsPlace({ kind, key }: Subject): Place {
  if (kind === 'finding') return { kind: 'finding', rule: key, part: 'comments' }
  if (kind === 'parameter') return { kind: 'parameter', parameter: key, part: 'comments' }
  return { kind: 'item', item: key, part: 'comments' }
}

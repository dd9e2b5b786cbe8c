import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { NonconformityPlace } from '@/shared/nonconformities/nonconformity'
import type { RecordKindKey } from '@/shared/records/record-kinds'
import { jointOfKey, type Subject } from '@/shared/reviews/subject'
import { recordOfKey, subjectInWords } from '@/shared/reviews/subject-in-words'
import { logOfCode } from '@/shared/records/every-log'

/** What a new nonconformity can take from where it was found. */
export interface FilledIn {
  readonly title: string
  readonly found: string
  readonly place: Partial<NonconformityPlace>
}

const NOTHING: FilledIn = { title: '', found: '', place: {} }

/** The boxes of a new nonconformity, as far as its source fills them. */
export function filledInFrom({ state, judgement }: ProgrammeView, source: Subject | undefined): FilledIn {
  if (!source) return NOTHING
  const title = subjectInWords(source)
  const { records } = state.facts
  switch (source.kind) {
    case 'finding':
      return { title, found: judgement.findings.get(source.key)?.found ?? '', place: {} }
    case 'lot': {
      const lot = records.lots.find(({ code }) => code === source.key)
      return lot
        ? { title, found: lot.disposition?.reason ?? '', place: { lot: lot.code, part: lot.part } }
        : NOTHING
    }
    case 'log': {
      const log = logOfCode(records, source.key)
      return log ? { title, found: '', place: { line: `${log.line}, ${log.machine}` } } : NOTHING
    }
    case 'joint':
      return fromJoint(state, source.key)
    case 'record':
      return fromRecord(state, source.key)
    case 'item':
    case 'parameter':
    case 'action':
    case 'set-aside':
    case 'concession':
    case 'study':
    case 'comment':
    case 'nonconformity':
    case 'point':
      return { ...NOTHING, title }
  }
}

function fromJoint({ facts }: ProgrammeView['state'], key: string): FilledIn {
  const place = jointOfKey(key)
  if (!place) return NOTHING
  const found = facts.records.inspections
    .filter(({ assembly }) => assembly === place.assembly)
    .flatMap(({ defects }) => defects.filter(({ joint }) => joint === place.joint))
  const kinds = [...new Set(found.map(({ kind }) => kind))].join(', ')
  const notes = found.flatMap(({ note }) => note ?? []).join('; ')
  return {
    title: `${kinds || 'Defect'} at ${place.joint} of ${place.assembly}`,
    found: [kinds, notes].filter(Boolean).join('. '),
    place,
  }
}

/** A record that names an assembly or a joint, such as a board that came back. */
function fromRecord({ facts }: ProgrammeView['state'], key: string): FilledIn {
  const { kind, id } = recordOfKey(key)
  const row = (facts.records.byKind.get(kind as RecordKindKey) ?? []).find((one) => one.id === id)
  if (!row) return NOTHING
  const text = (name: string) => {
    const value = (row as Readonly<Record<string, unknown>>)[name]
    return typeof value === 'string' ? value : ''
  }
  return {
    title: `${subjectInWords({ kind: 'record', key })} ${text('assembly')}`.trim(),
    found: text('lesson') || text('note'),
    place: { assembly: text('assembly'), joint: text('joint'), line: text('line') },
  }
}

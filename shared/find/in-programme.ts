import type { ItemDefinition } from '@/shared/catalogue/item'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import type { Place } from '@/shared/place'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { findCharacteristic } from '@/shared/records/characteristics'
import type { Findable } from './findable'

type InProgramme = Findable<Place>

/** Everything of a programme that can be looked for: its plan, and what is recorded in it. */
export function programmeFindables(state: ProgrammeState): InProgramme[] {
  const { programme } = state
  const found: Omit<InProgramme, 'programme'>[] = [
    {
      group: 'programme',
      label: programme.code,
      also: [programme.title],
      detail: programme.title,
      where: { kind: 'route card' },
    },
    ...state.items.flatMap(({ definition }) => ofItem(definition)),
    ...actionsOf(state),
    ...lotsOf(state),
    ...logsOf(state),
    ...evidenceOf(state),
    ...peopleOf(state),
  ]
  return found.map((one) => ({ ...one, programme: programme.code }))
}

type Found = Omit<InProgramme, 'programme'>[]

function ofItem({ key, title, stage, parameters, limits, rules }: ItemDefinition): Found {
  return [
    {
      group: 'item',
      label: title,
      also: [key],
      detail: STAGE_NAMES[stage],
      where: { kind: 'item', item: key },
    },
    ...parameters.map(
      (parameter) =>
        ({
          group: 'value',
          label: parameter.label,
          also: [parameter.key],
          detail: title,
          where: { kind: 'parameter', parameter: parameter.key },
        }) as const,
    ),
    ...limits.map(
      (limit) =>
        ({
          group: 'limit',
          label: limit.label,
          also: [limit.key],
          detail: title,
          where: { kind: 'limit', limit: limit.key },
        }) as const,
    ),
    ...rules.map(
      (rule) =>
        ({
          group: 'check',
          label: rule.title,
          also: [rule.id],
          detail: title,
          where: { kind: 'finding', rule: rule.id },
        }) as const,
    ),
  ]
}

const actionsOf = ({ actions }: ProgrammeState): Found =>
  actions.map(({ number, question }) => ({
    group: 'action',
    label: `Action ${number}: ${question}`,
    also: [String(number)],
    where: { kind: 'action', number },
  }))

const lotsOf = ({ facts }: ProgrammeState): Found =>
  facts.records.lots.map(({ code, kind, part, supplier, dateCode }) => ({
    group: 'lot',
    label: code,
    also: [part, supplier, dateCode],
    detail: `${kind}, ${part}, ${supplier}`,
    where: { kind: 'lot', lot: code },
  }))

const logsOf = ({ facts }: ProgrammeState): Found =>
  [...facts.records.logs.values()].flat().map(({ code, characteristic, line, machine }) => ({
    group: 'log',
    label: code,
    also: [findCharacteristic(characteristic)?.label ?? '', line, machine],
    detail: findCharacteristic(characteristic)?.label ?? characteristic,
    where: { kind: 'log', log: code },
  }))

const ARCHIVE = /\.zip$/i

/** A file, a link or an archive of board files; what of an archive was read has a page of its own. */
const evidenceOf = ({ evidence }: ProgrammeState): Found =>
  evidence.map(({ id, itemKey, kind, note, fileName, url }) => ({
    group: 'evidence',
    label: fileName ?? url ?? kind,
    also: [kind, note],
    detail: note ? `${kind}: ${note}` : kind,
    where:
      fileName !== null && ARCHIVE.test(fileName)
        ? { kind: 'board', evidence: id }
        : { kind: 'item', item: itemKey, part: 'evidence' },
  }))

const peopleOf = ({ members }: ProgrammeState): Found =>
  [...new Set(members.map(({ name }) => name))].map((name) => ({
    group: 'person',
    label: name,
    also: [],
    where: { kind: 'members' },
  }))

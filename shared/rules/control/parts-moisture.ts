import { moistureSensitiveParts } from '@/shared/plan/parameters/control-handling'
import { partsList } from '@/shared/plan/parameters/parts-list'
import { namesComponent } from '@/shared/records/lot-identity'
import type { RecordOf } from '@/shared/records/record-kinds'
import { fromMemory } from '@/shared/sources/provenance'
import { FLOOR_LIFE, type MoistureLevel } from '@/shared/materials/moisture-sensitivity'
import type { Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { partsOfTheWorks, recordsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { partsNamedIn, type ListedPart } from '@/shared/works/listed-part'

const SOURCE = fromMemory('J-STD-020 and J-STD-033: a part of level 2 or more is handled by its level')

type Exposure = RecordOf<'moisture-exposure'>

export const partsMoisture = rule({
  id: 'parts-moisture',
  title: 'Moisture levels of the parts list',
  why: 'A part that drinks moisture is counted by the hours of its level. Handled by another level, or as if it had none, it cracks inside where nobody sees it.',
  formula:
    'a part of level 2 or more: moisture-sensitive parts are specified; level of each exposure recorded = level of the part',
  stage: 'control',
  version: 1,
  reads: {
    list: optional(partsList),
    parts: partsOfTheWorks,
    sensitive: optional(moistureSensitiveParts),
    exposures: recordsOf('moisture-exposure', 'moisture exposures'),
  },
  judge({ list, parts, sensitive, exposures }) {
    if (!list) return notApplicable('No parts list is stated for this programme.')
    const named = partsNamedIn(list)
    const levelled = parts.filter(({ code, values }) => named.includes(code) && isSensitive(values))
    if (levelled.length === 0)
      return notApplicable('No part of the list has a moisture sensitivity level of 2 or more.')
    return judgedByParts({
      parts: levelled.flatMap((part) => [
        handledAtAll(part, sensitive),
        ...exposures.filter((one) => namesComponent(one.part, part.code)).map((one) => held(one, part)),
      ]),
      noun: 'comparisons',
      limit: 'Specified as moisture-sensitive, and every exposure counted by the level of the part.',
      working: [],
      sources: [SOURCE, FLOOR_LIFE[0].source],
    })
  },
})

const isSensitive = ({ moistureLevel }: ListedPart['values']): boolean =>
  moistureLevel !== undefined && moistureLevel !== '1'

function handledAtAll({ code, values }: ListedPart, sensitive: boolean | undefined): Part {
  const level: MoistureLevel = values.moistureLevel ?? '1'
  const named = {
    subject: code,
    about: { part: code },
    measured: { level, specified: sensitive ?? 'not stated' },
  }
  if (sensitive === true)
    return { ...named, verdict: 'meets', found: `level ${level}; moisture-sensitive parts are specified.` }
  return {
    ...named,
    verdict: sensitive === false ? 'fails' : 'undetermined',
    found:
      sensitive === false
        ? `level ${level}, and it is specified that no moisture-sensitive part is soldered.`
        : `level ${level}, and it is not specified whether moisture-sensitive parts are soldered.`,
    remedy: { message: `Specify that moisture-sensitive parts are soldered, or take ${code} off the list.` },
  }
}

function held({ part, openedOn, level }: Exposure, { values }: ListedPart): Part {
  const asked = values.moistureLevel ?? '1'
  const named = {
    subject: `${part}, opened ${openedOn}`,
    about: { part, openedOn },
    measured: { recorded: level, ofPart: asked },
  }
  if (level === asked) return { ...named, verdict: 'meets', found: `counted by level ${level}.` }
  return {
    ...named,
    verdict: 'fails',
    found: `counted by level ${level}; the part has level ${asked}.`,
    remedy: { message: 'Read the label of the pack again; correct the record, or revise the part.' },
  }
}

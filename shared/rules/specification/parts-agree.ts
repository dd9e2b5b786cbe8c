import { leadFinishes } from '@/shared/plan/parameters/finishes'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { partsList } from '@/shared/plan/parameters/parts-list'
import { groupedBy } from '@/shared/grouped-by'
import { commonPractice } from '@/shared/sources/provenance'
import type { FoundValue, Part } from '@/shared/rules/finding'
import { count, measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { partsOfTheWorks } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import type { ListedPart } from '@/shared/works/listed-part'
import { contradictions, type Contradiction } from '@/shared/works/part-contradictions'
import {
  componentFinder,
  partsOnBoard,
  type KnownComponent,
  type OnBoard,
} from '@/shared/works/parts-on-board'
import { referencesIn } from '@/shared/works/references'
import { NO_PARTS_LIST } from './parts-list-counted'

const SOURCE = commonPractice('What a table says of a part and what the part itself says are the same')

type Finder = ReturnType<typeof componentFinder>

export const partsAgree = rule({
  id: 'parts-agree',
  title: 'Tables agree with the parts',
  why: 'Clearance, fill and life in store are judged on the leads that the tables hold. Where the part that is bought has others, all of that was judged on a part that does not exist.',
  formula:
    'lead, coating and way of soldering in the tables = those of the part; joints of a component = Σ pieces · leads of each; each reference of a part with a lead for a hole is in a row of the hole table',
  stage: 'specification',
  version: 2,
  reads: {
    list: optional(partsList),
    parts: partsOfTheWorks,
    holes: optional(leadHoles),
    finishes: optional(leadFinishes),
  },
  judge({ list, parts, holes = [], finishes = [] }) {
    if (!list) return notApplicable(NO_PARTS_LIST)
    const onBoard = partsOnBoard(list, parts)
    const find = componentFinder(onBoard)
    const judged = [
      ...holes.flatMap((row) => rowParts('hole table', row, find, 'leads')),
      ...finishes.flatMap((row) => rowParts('lead finishes', row, find, 'coatings')),
      ...solderingParts(holes, find),
      ...jointParts(holes, find),
      ...placesWithoutHole(holes, onBoard, find),
    ]
    if (judged.length === 0)
      return notApplicable(
        'Neither the hole table nor the lead finishes name a component of the list that is described.',
      )
    return judgedByParts({
      parts: judged,
      noun: 'comparisons',
      limit: 'The same value wherever a table and a part both say one.',
      working: [],
      sources: [SOURCE],
    })
  },
})

const describedParts = ({ rows }: KnownComponent): ListedPart[] => [
  ...new Set(rows.flatMap(({ of }) => of.part ?? [])),
]

/** A row of a table against each part that it stands for. */
function rowParts(
  table: 'hole table' | 'lead finishes',
  row: { readonly component: string },
  find: Finder,
  said: 'leads' | 'coatings',
): Part[] {
  const known = find(row.component)
  if (!known) return []
  return describedParts(known).flatMap((part): Part[] => {
    const named = { about: { table, component: row.component, part: part.code } }
    const found = contradictions(row as Readonly<Record<string, unknown>>, part, said)
    if (found.length === 0)
      return [
        {
          ...named,
          subject: `${row.component}, ${table}`,
          verdict: 'meets',
          found: `as part ${part.code} has it.`,
        },
      ]
    return found.map((one) => ({
      subject: `${row.component}, ${one.label.toLowerCase()}`,
      about: { ...named.about, column: one.column },
      verdict: 'fails',
      measured: { typed: foundValue(one, one.typed), ofPart: foundValue(one, one.ofPart) },
      found: `the ${table} has ${one.typedInWords}, part ${part.code} ${one.ofPartInWords}.`,
      remedy: { message: `Take the value of part ${part.code}, or revise the part if it is wrong.` },
    }))
  })
}

const foundValue = ({ unit }: Contradiction, value: string | number | boolean): FoundValue =>
  typeof value === 'number' ? measure(value, unit ?? '1') : value

/** Hand or machine, where both tables say it. */
const solderingParts = (holes: readonly LeadHole[], find: Finder): Part[] =>
  holes.flatMap(({ component, soldered }) =>
    (find(component)?.rows ?? []).flatMap(({ of: { row } }): Part[] =>
      row.soldered === undefined || row.soldered === soldered
        ? []
        : [
            {
              subject: `${component}, soldered`,
              about: { table: 'hole table', component, part: row.part, column: 'soldered' },
              verdict: 'fails',
              measured: { typed: soldered, ofPart: row.soldered },
              found: `the hole table has it soldered by ${soldered}, the parts list by ${row.soldered}.`,
              remedy: { message: 'Say the same in both tables.' },
            },
          ],
    ),
  )

/** The joints of all rows of a component, against the leads of its pieces; where every part says its leads. */
function jointParts(holes: readonly LeadHole[], find: Finder): Part[] {
  const byComponent = groupedBy(holes, ({ component }) => component.trim().toUpperCase())
  return [...byComponent.values()].flatMap((rows): Part[] => {
    const component = rows[0]!.component
    const asked = jointsAsked(find(component))
    if (asked === undefined) return []
    const typed = rows.reduce((sum, { joints }) => sum + joints, 0)
    return [
      {
        subject: `${component}, joints`,
        about: { table: 'hole table', component, column: 'joints' },
        verdict: typed === asked ? 'meets' : 'fails',
        measured: { typed: count(typed, 'joints'), ofParts: count(asked, 'joints') },
        found: `${typed} joints in the hole table, ${asked} by pieces and leads.`,
        ...(typed !== asked && {
          remedy: { message: 'Count the joints again, or mend the leads of the part.' },
        }),
      },
    ]
  })
}

/** References of parts whose lead is made for a hole, which no row of the hole table has; where there is such a table. */
function placesWithoutHole(holes: readonly LeadHole[], onBoard: readonly OnBoard[], find: Finder): Part[] {
  if (holes.length === 0) return []
  const inHoles = new Set(holes.flatMap(({ component }) => placesOf(component, find)))
  return onBoard.flatMap(({ row, at, names, part }): Part[] => {
    const missing = part?.values.leadMm === undefined ? [] : names.filter((name) => !inHoles.has(name))
    if (missing.length === 0) return []
    const several = missing.length > 1
    return [
      {
        subject: `Row ${at + 1}, ${row.part}, holes`,
        about: { table: 'hole table', part: row.part, row: String(at + 1), column: 'component' },
        verdict: 'undetermined',
        measured: { missing },
        found: `${missing.join(', ')} ${several ? 'stand' : 'stands'} in the parts list and in no row of the hole table.`,
        remedy: {
          message: `Add ${several ? 'their holes' : 'its hole'} to the hole table, or take ${several ? 'them' : 'it'} off the list.`,
        },
      },
    ]
  })
}

/** The references that a row of the hole table stands for. */
const placesOf = (component: string, find: Finder): readonly string[] => {
  const { names } = referencesIn(component)
  const listed = find(component)?.rows.flatMap(({ of }) => of.names) ?? []
  return names && names.length > 0 ? names : listed
}

function jointsAsked(known: KnownComponent | undefined): number | undefined {
  if (!known) return undefined
  let sum = 0
  for (const { of, pieces } of known.rows) {
    const leads = of.part?.values.leads
    if (leads === undefined) return undefined
    sum += pieces * leads
  }
  return sum
}

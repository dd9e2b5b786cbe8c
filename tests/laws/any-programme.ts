import { COST_KINDS } from '@/shared/cost/cost-line'
import fc from 'fast-check'
import { ALL_LIMITS, ALL_PARAMETERS, STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import { DEPARTURE_WAYS } from '@/shared/gate/deviation-permit'
import {
  ACTION_KINDS,
  type ActionEntry,
  type ApprovalEntry,
  type ConcessionEntry,
  type EvidenceEntry,
  type GateSignatureEntry,
  type PlannedItem,
  type ProgrammeState,
} from '@/shared/gate/programme-state'
import { DEPARTMENTS } from '@/shared/plan/department'
import { AUTHORITIES, type Requirement } from '@/shared/plan/requirement'
import { impossibleLimit, limitRange } from '@/shared/plan/limit-range'
import { STAGES } from '@/shared/plan/stage'
import type { Facts } from '@/shared/rules/facts'
import { anyDay, anyName, anyRecords, TODAY } from './any-records'
import { anyNumber, anyValue } from './any-value'

/** A limit as a document may state it: near the default, or anywhere that the limit can lie. */
const anyRequirement: fc.Arbitrary<Requirement> = fc.constantFrom(...ALL_LIMITS).chain((limit) =>
  fc.record({
    id: fc.uuid(),
    limit: fc.constant(limit.key),
    authority: fc.constantFrom(...AUTHORITIES),
    document: anyName,
    clause: fc.constant(''),
    value: fc
      .oneof(
        fc.integer({ min: 20, max: 500 }).map((percent) => (percent / 100) * limit.byDefault.value),
        anyNumber(limitRange(limit).min, limitRange(limit).max),
      )
      .map((value) => (impossibleLimit(limit, value) === undefined ? value : limit.byDefault.value)),
    relaxes: fc.boolean(),
    reason: anyName,
    lesson: fc.constant(null),
  }),
)

const anyValues: fc.Arbitrary<Facts['values']> = fc
  .tuple(
    ...ALL_PARAMETERS.map((parameter) =>
      fc
        .option(anyValue(parameter), { nil: undefined, freq: 12 })
        .map((value) => [parameter.key, value] as const),
    ),
  )
  .map((values) => new Map(values.filter(([, value]) => value !== undefined)))

/** Any facts of a programme that the door lets in. */
export const anyFacts: fc.Arbitrary<Facts> = fc.record({
  values: anyValues,
  requirements: fc.array(anyRequirement, { maxLength: 6 }),
  records: anyRecords,
  today: fc.constant(TODAY),
})

const AT = `${TODAY}T08:00:00.000Z`
const itemKey = fc.constantFrom(...STANDARD_PLAN.map(({ key }) => key))
const department = fc.constantFrom(...DEPARTMENTS)
const signed = fc.record({
  byId: anyName,
  byName: anyName,
  at: fc.constant(AT),
  on: fc.constant(TODAY),
})
const perhaps = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null })
const digest = fc.constantFrom('0'.repeat(64), 'f'.repeat(64))

const anyItem = (definition: (typeof STANDARD_PLAN)[number]): fc.Arbitrary<PlannedItem> =>
  fc.record({
    definition: fc.constant(definition),
    added: fc.constant(false),
    tailoredOut: fc.option(
      fc.record({
        reason: anyName,
        proposedById: anyName,
        proposedByName: anyName,
        proposedAt: fc.constant(AT),
        agreed: perhaps(signed),
      }),
      { nil: null, freq: 4 },
    ),
    lesson: perhaps(fc.record({ programme: anyName, number: fc.integer({ min: 1, max: 9 }) })),
  })

const anyEvidence: fc.Arbitrary<EvidenceEntry> = fc.record({
  id: fc.uuid(),
  itemKey,
  kind: fc.constantFrom(...STANDARD_PLAN.flatMap(({ evidence }) => evidence.map(({ kind }) => kind))),
  note: anyName,
  sha256: perhaps(digest),
  fileName: perhaps(anyName),
  url: fc.constant(null),
  addedById: anyName,
  addedByName: anyName,
  at: fc.constant(AT),
})

const anyAction: fc.Arbitrary<ActionEntry> = fc.record({
  id: fc.uuid(),
  number: fc.integer({ min: 1, max: 9 }),
  itemKey,
  from: department,
  to: department,
  kind: fc.constantFrom(...ACTION_KINDS),
  question: anyName,
  dueOn: anyDay,
  askedById: anyName,
  askedByName: anyName,
  askedAt: fc.constant(AT),
  askedOf: fc.constant(null),
  study: fc.constant(null),
  files: fc.constant([]),
  answer: perhaps(
    fc.record({
      feasible: fc.constantFrom('yes', 'no', 'with changes', 'not asked'),
      amounts: fc.array(
        fc.record({
          kind: fc.constantFrom(...COST_KINDS),
          per: fc.constantFrom('board', 'lot', 'once', null),
          amount: perhaps(anyNumber(0, 1e9)),
          alternative: perhaps(anyName),
        }),
        { maxLength: 3 },
      ),
      comment: anyName,
    }),
  ),
  answeredById: perhaps(anyName),
  answeredByName: perhaps(anyName),
  answeredAt: perhaps(fc.constant(AT)),
  outcome: fc.constantFrom('accepted', 'returned', 'withdrawn', null),
  outcomeWhy: perhaps(anyName),
})

const anyApproval: fc.Arbitrary<ApprovalEntry> = fc.record({
  id: fc.uuid(),
  itemKey,
  department,
  personId: anyName,
  personName: anyName,
  digest,
  signedContent: fc.constant('{}'),
  found: fc.constant(null),
  at: fc.constant(AT),
})

const anyDeparture: fc.Arbitrary<ConcessionEntry['permit']> = fc.oneof(
  fc.constant(null),
  fc.constantFrom(...ALL_LIMITS).chain((limit) =>
    fc.record({
      kind: fc.constant('limit' as const),
      limit: fc.constant(limit.key),
      value: anyNumber(limitRange(limit).min, limitRange(limit).max),
    }),
  ),
  fc.record({
    kind: fc.constant('parts' as const),
    way: fc.constantFrom(...DEPARTURE_WAYS),
    parts: fc.array(anyName, { maxLength: 2 }),
  }),
)

const anyConcession: fc.Arbitrary<ConcessionEntry> = fc
  .constantFrom(...STANDARD_PLAN.filter(({ rules }) => rules.length > 0))
  .chain(({ key, rules }) =>
    fc.record({
      id: fc.uuid(),
      number: fc.integer({ min: 1, max: 9 }),
      itemKey: fc.constant(key),
      rule: fc.constantFrom(...rules.map(({ id }) => id)),
      findingDigest: digest,
      findingData: perhaps(fc.constant('{}')),
      permit: anyDeparture,
      why: anyName,
      quantity: perhaps(fc.constantFrom(1, 100_000_000)),
      untilOn: perhaps(anyDay),
      requestedById: anyName,
      requestedByName: anyName,
      requestedAt: fc.constant(AT),
      design: perhaps(signed),
      quality: perhaps(signed),
      refused: perhaps(fc.record({ byId: anyName, byName: anyName, at: fc.constant(AT), why: anyName })),
    }),
  )

const anyGateSignature: fc.Arbitrary<GateSignatureEntry> = fc.record({
  id: fc.uuid(),
  stage: fc.constantFrom(...STAGES),
  department,
  personId: anyName,
  personName: anyName,
  digest,
  signedContent: fc.constant('{}'),
  merkleRoot: digest,
  trailSeq: fc.integer({ min: 1, max: 9 }),
  headHash: digest,
  at: fc.constant(AT),
})

/** Any programme of the standard plan: all that it specifies, records, asks and signs. */
export const anyProgramme: fc.Arbitrary<ProgrammeState> = fc
  .record({
    programme: fc.record({ id: anyName, code: anyName, title: anyName, leadId: anyName }),
    members: fc.array(fc.record({ personId: anyName, name: anyName, department }), { maxLength: 4 }),
    items: fc.tuple(...STANDARD_PLAN.map(anyItem)),
    facts: anyFacts,
    evidence: fc.array(anyEvidence, { maxLength: 3 }),
    actions: fc.array(anyAction, { maxLength: 3 }),
    approvals: fc.array(anyApproval, { maxLength: 3 }),
    concessions: fc.array(anyConcession, { maxLength: 3 }),
    gateSignatures: fc.array(anyGateSignature, { maxLength: 3 }),
  })
  .map((state) => ({ ...state, revisions: revisionsOf(state.facts) }))

const revisionsOf = ({ values }: Facts): ProgrammeState['revisions'] =>
  new Map(
    [...values].map(([parameter, value]) => [
      parameter,
      { parameter, number: 1, value, reason: '', authorId: 'd', authorName: 'D', at: AT },
    ]),
  )

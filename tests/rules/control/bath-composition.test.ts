import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NEW_SOLDER_BY_REVISION, NEW_SOLDER_MAX } from '@/shared/materials/bath-constituents'
import { shareAfterExchangePct } from '@/shared/physics/bath-exchange'
import { bathLimitEdition, bathMass, newSolderCopper } from '@/shared/plan/parameters/control-bath'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { tinLeadBathLimits } from '@/shared/plan/limits/control-bath'
import { bathCompositionRule } from '@/shared/rules/control/bath-composition'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { answer, INSTRUMENT, logOf } from '../log-builder'

/** A complete analysis well inside every tin-lead limit. */
const CLEAN = {
  tinPct: 63,
  copperPct: 0.1,
  goldPct: 0.02,
  cadmiumPct: 0.001,
  zincPct: 0.001,
  aluminiumPct: 0.001,
  antimonyPct: 0.1,
  ironPct: 0.005,
  arsenicPct: 0.005,
  bismuthPct: 0.05,
  silverPct: 0.02,
  nickelPct: 0.002,
  leadPct: 36.7,
}
const analysis = (over: Partial<typeof CLEAN>, at = '2026-02-02T08:00:00Z') => ({ at, ...CLEAN, ...over })
const TIN_LEAD = [set(alloyFamily, 'tin-lead'), set(solderingProcess, 'wave'), set(solderAlloy, 'sn63pb37')]
const judged = (rows: ReturnType<typeof analysis>[], over: FactsInput = {}) =>
  findingOf(bathCompositionRule, {
    values: TIN_LEAD,
    logs: [logOf('bath-composition', rows)],
    instruments: [INSTRUMENT],
    ...over,
  })

describe('bath contamination, tin-lead', () => {
  // Computed example of the combined test (J-STD-001C / MIL-STD-2000A total of 0.40 %).
  test('Cu 0.25, Au 0.08, Cd 0.003, Zn 0.002, Al 0.004 sum to 0.339 %, inside 0.4 %', () => {
    const finding = judged([
      analysis({ copperPct: 0.25, goldPct: 0.08, cadmiumPct: 0.003, zincPct: 0.002, aluminiumPct: 0.004 }),
    ])
    expect(finding.verdict).toBe('meets')
    expect(finding.working[0]).toMatchObject({
      numbers: '0.25 + 0.08 + 0.003 + 0.002 + 0.004',
      result: '0.339 %',
    })
  })

  // J-STD-001, table of bath limits, note: tin kept near its nominal. A depleted bath nobody looked at is no pass.
  test('tin that was never analysed is asked for', () => {
    const { tinPct, ...rest } = analysis({})
    expect(tinPct).toBe(63)
    const finding = judged([], { logs: [logOf('bath-composition', [rest])] })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toEqual([expect.stringContaining('Log L-1, tin:')])
  })

  test('every metal at its own limit passes singly, and the sum of 0.516 % fails', () => {
    const finding = judged([
      analysis({ copperPct: 0.3, goldPct: 0.2, cadmiumPct: 0.005, zincPct: 0.005, aluminiumPct: 0.006 }),
    ])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toMatch(/five metals together: 0\.516 %/)
    expect(finding.parts?.filter((part) => part.verdict === 'fails').map((part) => part.subject)).toEqual([
      'Log L-1, five metals together',
    ])
  })

  test.each([
    ['copperPct', 0.3, 'marginal'],
    ['copperPct', 0.301, 'fails'],
    ['aluminiumPct', 0.0061, 'fails'],
    ['silverPct', 0.1, 'marginal'],
    ['silverPct', 0.12, 'fails'],
    ['nickelPct', 0.011, 'fails'],
  ])('%s at %s %%: %s', (column, share, verdict) =>
    expect(judged([analysis({ [column]: share })]).verdict).toBe(verdict),
  )

  test('the edition is a choice: J-STD-001C as printed allows aluminium 0.008 %, and that is shown as looser', () => {
    const values = [...TIN_LEAD, set(bathLimitEdition, 'j-std-001c-assembly')]
    const finding = judged([analysis({ aluminiumPct: 0.007 })], { values })
    expect(finding.verdict).toBe('meets')
    expect(judged([analysis({ aluminiumPct: 0.0081 })], { values }).limit).toMatch(/looser than the default/)
  })

  test('a customer’s stricter copper limit rules under any edition', () => {
    const requirements = [requirement(tinLeadBathLimits.copper!, 0.2)]
    const finding = judged([analysis({ copperPct: 0.25 })], { requirements })
    expect(finding.verdict).toBe('fails')
    expect(finding.limit).toMatch(/CS-100 issue 2/)
    const chosen = [...TIN_LEAD, set(bathLimitEdition, 'j-std-001c-preconditioning')]
    expect(judged([analysis({ copperPct: 0.25 })], { requirements, values: chosen }).verdict).toBe('fails')
  })

  test('a tinning pot may hold more copper, and has no sum', () => {
    const values = [...TIN_LEAD, set(bathLimitEdition, 'j-std-001c-preconditioning')]
    expect(judged([analysis({ copperPct: 0.6, silverPct: 0.5 })], { values }).verdict).toBe('meets')
  })

  // Balance of masses: 300 kg with 0.36 % copper, new solder of 0.02 %.
  test('says the solder to exchange, and exchanging it meets', () => {
    const values = [...TIN_LEAD, set(bathMass, 300), set(newSolderCopper, 0.02)]
    const finding = judged([analysis({ copperPct: 0.36 })], { values })
    // 300 · (0.36 − 0.27) / (0.36 − 0.02) = 79.41 kg, to a tenth inside the limit of 0.30.
    expect(finding.remedy?.message).toMatch(/79\.41 kg of 300 kg/)
    const copperPct = shareAfterExchangePct({
      bathKg: 300,
      foundPct: 0.36,
      addedPct: 0.02,
      exchangedKg: 79.412,
    })
    const after = judged([analysis({ copperPct: 0.36 }), analysis({ copperPct }, '2026-02-03T08:00:00Z')], {
      values,
      records: { 'signal-answer': [answer({ readingAt: '2026-02-02T08:00:00Z' })] },
    })
    expect(after.verdict).toBe('meets')
  })

  test('where new solder may hold as much as the limit, no exchange is promised', () => {
    expect(judged([analysis({ arsenicPct: 0.05 })]).remedy?.message).toMatch(/certified well below/)
  })

  test('a metal never analysed is undetermined, not zero; one analysed earlier counts', () => {
    const without = { ...analysis({}), cadmiumPct: undefined }
    const finding = judged([without as never])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toContainEqual(expect.stringContaining('Log L-1, cadmium:'))
    expect(judged([analysis({}, '2026-01-12T08:00:00Z'), without as never]).verdict).toBe('meets')
  })

  // J-STD-001C / DOD-STD-2000A: tin within 1.5 % of nominal; 61 → 63 % in 400 kg takes 20.51 kg of pure tin (computed).
  test('tin 1.6 % low fails and says the pure tin; 1.5 % low is still inside', () => {
    const values = [...TIN_LEAD, set(bathMass, 400)]
    expect(judged([analysis({ tinPct: 61.5 })], { values }).verdict).toBe('marginal')
    expect(judged([analysis({ tinPct: 61 })], { values }).remedy?.message).toMatch(/20\.51 kg for pure tin/)
  })

  test('silver is no contaminant of Sn62Pb36Ag2', () => {
    const values = [set(alloyFamily, 'tin-lead'), set(solderAlloy, 'sn62pb36ag2')]
    expect(judged([analysis({ silverPct: 2, tinPct: 62 })], { values }).verdict).toBe('meets')
  })
})

describe('bath contamination, lead-free', () => {
  const LEAD_FREE = [set(alloyFamily, 'lead-free'), set(solderAlloy, 'sac305'), set(newSolderCopper, 0.5)]
  // J-STD-001F, lead-free (from memory): lead 0.1 %, copper 1.1 %.
  test('lead above 0.1 % fails; copper of 0.9 % does not', () => {
    expect(
      judged([analysis({ leadPct: 0.05, copperPct: 0.9, silverPct: 3 })], { values: LEAD_FREE }).verdict,
    ).toBe('meets')
    expect(judged([analysis({ leadPct: 0.11, silverPct: 3 })], { values: LEAD_FREE }).verdict).toBe('fails')
  })
  test('an edition of the other family is refused', () => {
    const values = [...LEAD_FREE, set(bathLimitEdition, 'mil-std-2000a-assembly')]
    expect(judged([analysis({ leadPct: 0.05 })], { values }).verdict).toBe('fails')
  })
  test('the cool-and-skim cure is not offered', () => {
    expect(judged([analysis({ leadPct: 0.05 })], { values: LEAD_FREE }).notes?.join()).toMatch(
      /does not work here/,
    )
  })
})

describe('what new solder may hold', () => {
  // J-STD-006B (2006) as quoted in 2007: antimony 0.05 %, lead 0.10 %; revision C (2013), from memory: 0.20 % and 0.07 %.
  test('is named by revision, and the looser of both is taken where no certificate is entered', () => {
    const { 'j-std-006b': b, 'j-std-006c': c } = NEW_SOLDER_BY_REVISION
    expect([b.max.antimony, b.max.lead, b.max.indium]).toEqual([0.05, 0.1, 0.1])
    expect([c.max.antimony, c.max.lead]).toEqual([0.2, 0.07])
    expect(NEW_SOLDER_MAX.max).toMatchObject({ antimony: 0.2, lead: 0.1, copper: 0.08 })
  })
  test('so that no exchange is promised to bring antimony of a lead-free bath below what may be added', () => {
    const values = [set(alloyFamily, 'lead-free'), set(solderAlloy, 'sac305'), set(newSolderCopper, 0.5)]
    const finding = judged([analysis({ antimonyPct: 0.25, leadPct: 0.05, silverPct: 3 })], { values })
    expect(finding.verdict).toBe('fails')
    expect(finding.remedy?.message).toMatch(/certified well below/)
  })
})

test('no analysis is undetermined; hand soldering asks for none', () => {
  expect(findingOf(bathCompositionRule, { values: TIN_LEAD }).verdict).toBe('undetermined')
  expect(
    findingOf(bathCompositionRule, { values: [set(alloyFamily, 'tin-lead'), set(solderingProcess, 'hand')] })
      .verdict,
  ).toBe('not applicable')
})

test('law: more of any metal never betters the verdict', () => {
  const order = ['meets', 'marginal', 'undetermined', 'fails']
  const metal = fc.constantFrom(
    'copperPct',
    'goldPct',
    'cadmiumPct',
    'zincPct',
    'aluminiumPct',
    'ironPct',
    'nickelPct',
  )
  const share = fc.double({ min: 0, max: 0.6, noNaN: true })
  fc.assert(
    fc.property(metal, share, share, (column, one, other) => {
      const [less, more] = one < other ? [one, other] : [other, one]
      const verdict = (value: number) => order.indexOf(judged([analysis({ [column]: value })]).verdict)
      expect(verdict(more)).toBeGreaterThanOrEqual(verdict(less))
    }),
    { numRuns: 60 },
  )
})

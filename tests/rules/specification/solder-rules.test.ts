import { describe, expect, test } from 'vitest'
import type { AlloyKey } from '@/shared/materials/alloys'
import type { BoardFinishKey } from '@/shared/materials/board-finishes'
import type { FluxKey } from '@/shared/materials/fluxes'
import { boardFinish, leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import {
  contactGold,
  contactNickel,
  contactsCovered,
  interconnection,
} from '@/shared/plan/parameters/interconnection'
import { serviceTemperature } from '@/shared/plan/parameters/laminate'
import { productClass } from '@/shared/plan/parameters/programme'
import {
  flux,
  fluxResidue,
  insulationNeeded,
  deliveriesUntil,
  leadExemptions,
  leadRestriction,
  solderAlloy,
} from '@/shared/plan/parameters/solder'
import { creepMargin } from '@/shared/rules/specification/creep-margin'
import { edgeContacts } from '@/shared/rules/specification/edge-contacts'
import { fluxResidueRule } from '@/shared/rules/specification/flux-residue'
import { leadRestrictionRule } from '@/shared/rules/specification/lead-restriction'
import { whiskerMitigation } from '@/shared/rules/specification/whisker-mitigation'
import { afterRemedy, factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { leadFinish } from './finish-rows'

describe('creep margin', () => {
  const at = (alloy: AlloyKey, service: number) => ({
    values: [set(solderAlloy, alloy), set(serviceTemperature, service)],
  })
  test.each([
    ['sn60pb40', 100, 'meets'],
    ['sn60pb40', 120, 'marginal'],
    ['sn60pb40', 124, 'fails'],
    ['sac305', 140, 'meets'],
    ['sn42bi58', 85, 'fails'],
  ] as const)('%s at %s °C %s', (alloy, service, verdict) => {
    expect(findingOf(creepMargin, at(alloy, service)).verdict).toBe(verdict)
  })
  test('says how near the melting point it works: 373.15 of 456.15 K is 81.8 %', () => {
    expect(findingOf(creepMargin, at('sn60pb40', 100)).found).toContain('81.8 %')
  })
  test('the service temperature of the remedy meets', () => {
    expect(afterRemedy(creepMargin, factsWith(at('sn42bi58', 100))).verdict).toBe('meets')
  })
})

describe('flux residue', () => {
  const judged = (key: FluxKey, residue: 'stays' | 'removed', needed?: number) =>
    findingOf(fluxResidueRule, {
      values: [
        set(flux, key),
        set(fluxResidue, residue),
        ...(needed === undefined ? [] : [set(insulationNeeded, needed)]),
      ],
    })
  // J-STD-001, 3.3: L0 and L1 of RO, RE and OR, but OR L1 not where residue stays.
  test.each([
    ['rol0', 'stays', undefined, 'undetermined'],
    ['rol0', 'stays', 10, 'meets'],
    ['rol0', 'stays', 80, 'marginal'],
    ['rol0', 'stays', 1000, 'fails'],
    ['rol0', 'removed', 1000, 'meets'],
    ['orl1', 'stays', undefined, 'fails'],
    ['rom1', 'stays', undefined, 'undetermined'],
    ['rom1', 'stays', 10, 'marginal'],
    ['inh1', 'stays', undefined, 'fails'],
    ['orh1', 'removed', undefined, 'meets'],
  ] as const)('%s that %s, %s MΩ needed: %s', (key, residue, needed, verdict) => {
    expect(judged(key, residue, needed).verdict).toBe(verdict)
  })
  test('removing it brings the caution of solvents', () => {
    expect(judged('rol0', 'removed').cautions?.[0]).toContain('burn')
  })
})

describe('restriction of lead', () => {
  const judged = (
    regime: 'restricted' | 'exempt' | 'out-of-scope',
    alloy: AlloyKey,
    finish: BoardFinishKey,
    row: LeadFinish,
  ) =>
    findingOf(leadRestrictionRule, {
      values: [
        set(leadRestriction, regime),
        set(solderAlloy, alloy),
        set(boardFinish, finish),
        set(leadFinishes, [row]),
      ],
    })
  const tin = leadFinish({ coating: 'tin-matte' })
  test.each([
    ['restricted', 'sac305', 'enig', tin, 'meets'],
    ['restricted', 'sac305', 'enig', leadFinish(), 'fails'],
    ['restricted', 'sac305', 'hot-air-tin-lead', tin, 'fails'],
    ['restricted', 'sn60pb40', 'enig', tin, 'fails'],
    ['exempt', 'sn60pb40', 'enig', tin, 'undetermined'],
    ['out-of-scope', 'sn60pb40', 'tin-lead-plated', leadFinish(), 'meets'],
  ] as const)('%s, %s, %s: %5$s', (regime, alloy, finish, row, verdict) => {
    expect(judged(regime, alloy, finish, row).verdict).toBe(verdict)
  })
  describe('under an exemption', () => {
    const exempt = (expiresOn: string | undefined, until?: string, now = '2026-03-02') =>
      findingOf(leadRestrictionRule, {
        values: [
          set(leadRestriction, 'exempt'),
          set(solderAlloy, 'sn60pb40'),
          set(boardFinish, 'enig'),
          set(leadFinishes, [tin]),
          set(leadExemptions, [{ exemption: '7(a)', covers: 'solder of high melting point', expiresOn }]),
          ...(until === undefined ? [] : [set(deliveriesUntil, until)]),
        ],
        today: now,
      })
    test('its last day and the last delivery decide', () => {
      expect(exempt('2027-06-30', '2027-06-30').verdict).toBe('meets')
      expect(exempt('2027-06-30', '2027-07-01').verdict).toBe('fails')
      expect(exempt('2027-06-30', '2027-07-01').found).toContain('before the last delivery')
    })
    test('it has run out the day after', () => {
      expect(exempt('2026-03-02', '2026-03-02').verdict).toBe('meets')
      expect(exempt('2026-03-01', '2026-02-01').verdict).toBe('fails')
      expect(exempt('2026-03-01').found).toContain('ran out')
    })
    test('what is not stated is undetermined', () => {
      expect(exempt(undefined, '2027-01-01').verdict).toBe('undetermined')
      expect(exempt('2027-06-30').verdict).toBe('undetermined')
    })
  })
  test('always says that it is no legal advice', () => {
    expect(judged('restricted', 'sac305', 'enig', tin).cautions?.[0]).toContain('No legal advice')
  })
})

describe('whiskers', () => {
  const judged = (grade: '1' | '2' | '3', row: LeadFinish, finish: BoardFinishKey = 'osp') =>
    findingOf(whiskerMitigation, {
      values: [set(productClass, grade), set(boardFinish, finish), set(leadFinishes, [row])],
    })
  const matte = (over: Partial<LeadFinish> = {}) => leadFinish({ coating: 'tin-matte', ...over })
  test.each([
    ['3', leadFinish(), 'not applicable'],
    ['2', leadFinish({ coating: 'tin-bright' }), 'fails'],
    ['1', leadFinish({ coating: 'tin-bright' }), 'marginal'],
    ['2', matte(), 'fails'],
    ['1', matte(), 'marginal'],
    ['2', matte({ barrier: 'nickel', barrierUm: 1.5 }), 'meets'],
    ['2', matte({ barrier: 'nickel', barrierUm: 1 }), 'fails'],
    ['2', matte({ annealed: true, coatingUm: 8 }), 'meets'],
    ['3', matte({ annealed: true, coatingUm: 8 }), 'marginal'],
    ['3', matte(), 'fails'],
  ] as const)('class %s, %o: %3$s', (grade, row, verdict) => {
    expect(judged(grade, row).verdict).toBe(verdict)
  })
  test('a board of pure tin is close to the limit in every class, as a lead without a measure is', () => {
    expect(judged('2', leadFinish(), 'tin-plated').verdict).toBe('marginal')
    expect(judged('1', leadFinish(), 'tin-plated').verdict).toBe('marginal')
  })
})

describe('edge contacts', () => {
  const edge = (...more: SetValue[]) => ({ values: [set(interconnection, 'edge'), ...more] })
  // MIL-STD-275 and MIL-G-45204: nickel 5.1 µm, gold 50 to 100 microinches (1.27 to 2.54 µm).
  test('pins need no gold', () => {
    expect(findingOf(edgeContacts, { values: [set(interconnection, 'pins')] }).verdict).toBe('not applicable')
  })
  test('1.27 µm over 5.1 µm, covered, meets', () => {
    const values = [set(contactGold, 1.27), set(contactNickel, 5.1), set(contactsCovered, true)]
    expect(findingOf(edgeContacts, edge(...values)).verdict).toBe('meets')
  })
  test('what is not said is not taken as good', () => {
    const finding = findingOf(edgeContacts, edge(set(contactGold, 1.27)))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toHaveLength(2)
  })
  test('thin gold and uncovered contacts fail; the gold of the remedy meets', () => {
    const thin = edge(set(contactGold, 0.5), set(contactNickel, 5.1), set(contactsCovered, true))
    expect(findingOf(edgeContacts, thin).verdict).toBe('fails')
    expect(afterRemedy(edgeContacts, factsWith(thin)).verdict).toBe('meets')
    const open = edge(set(contactGold, 2), set(contactNickel, 6), set(contactsCovered, false))
    expect(findingOf(edgeContacts, open).verdict).toBe('fails')
  })
})

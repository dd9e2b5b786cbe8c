import { describe, expect, test } from 'vitest'
import { ionicResidueMax } from '@/shared/plan/limits/assessment-residue'
import { cleanlinessEdition } from '@/shared/plan/parameters/assessment-residue'
import { fluxResidue } from '@/shared/plan/parameters/solder'
import { fluxRemovalTrial } from '@/shared/rules/assessment/flux-removal-trial'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'

const judged = (over: Record<string, string | number>, input: FactsInput = {}) =>
  findingOf(fluxRemovalTrial, {
    values: [set(fluxResidue, 'removed')],
    records: {
      'flux-removal': [
        {
          id: 'f1',
          triedOn: '2026-02-11',
          assembly: 'A-1',
          cleaning: 'alcohol, two rinses',
          beforeUgPerCm2: 6,
          afterUgPerCm2: 0.8,
          residue: 'none',
          ...over,
        } as { id: string },
      ],
    },
    ...input,
  })

describe('flux removal, before and after', () => {
  // NASA-STD-8739.3 1.55 µg/cm², J-STD-001 before 2018 1.56 µg/cm² (both from memory).
  test.each([
    [{}, 'meets'],
    [{ afterUgPerCm2: 1.5 }, 'marginal'],
    [{ afterUgPerCm2: 1.55 }, 'marginal'],
    [{ afterUgPerCm2: 1.56 }, 'fails'],
    [{ residue: 'traces' }, 'marginal'],
    [{ residue: 'plain' }, 'fails'],
    [{ beforeUgPerCm2: 0.8 }, 'fails'],
    [{ beforeUgPerCm2: 0, afterUgPerCm2: 0 }, 'undetermined'],
    [{ beforeUgPerCm2: 0, afterUgPerCm2: 0.3 }, 'fails'],
  ])('%o %s', (over, verdict) => expect(judged(over).verdict).toBe(verdict))

  test('the edition is a choice, and a customer’s stricter figure rules over it', () => {
    const values = [set(fluxResidue, 'removed'), set(cleanlinessEdition, 'j-std-001')]
    expect(judged({ afterUgPerCm2: 1.56 }, { values }).verdict).toBe('marginal')
    expect(judged({}, { values, requirements: [requirement(ionicResidueMax, 0.5)] }).verdict).toBe('fails')
  })
  test('the share removed is worked out', () => {
    expect(judged({ beforeUgPerCm2: 8, afterUgPerCm2: 1 }).working[0]?.result).toBe('87.5 %')
  })
  test('residue that is to be removed wants a trial; residue that stays wants none; nothing said is no answer', () => {
    const finding = findingOf(fluxRemovalTrial, { values: [set(fluxResidue, 'removed')] })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toEqual(['a flux removal trial'])
    expect(findingOf(fluxRemovalTrial, { values: [set(fluxResidue, 'stays')] }).verdict).toBe(
      'not applicable',
    )
    expect(findingOf(fluxRemovalTrial).missing).toEqual([fluxResidue.label])
  })
})

import { describe, expect, test } from 'vitest'
import type { BoardFinishKey } from '@/shared/materials/board-finishes'
import { boardFinish } from '@/shared/plan/parameters/finishes'
import { boardStorageMonths } from '@/shared/plan/parameters/storage'
import { finishShelfLife } from '@/shared/rules/specification/finish-shelf-life'
import { afterRemedy, factsWith, findingOf, set } from '../facts-builder'

const stored = (finish: BoardFinishKey, months: number) => ({
  values: [set(boardFinish, finish), set(boardStorageMonths, months)],
})

describe('shelf life of the board finish', () => {
  // Common practice, no published source: preserved copper 3 to 12 months, gold 6 to 12; lacquer for short storage only.
  test.each([
    ['osp', 3, 'meets'],
    ['osp', 6, 'marginal'],
    ['osp', 12, 'marginal'],
    ['osp', 13, 'fails'],
    ['hot-air-tin-lead', 12, 'meets'],
    ['hot-air-tin-lead', 12.5, 'fails'],
    ['lacquer', 1, 'meets'],
    ['lacquer', 3, 'marginal'],
    ['lacquer', 4, 'fails'],
    ['bare-copper', 1, 'fails'],
    ['bare-copper', 0, 'meets'],
    ['tin-plated', 24, 'not applicable'],
  ] as const)('%s for %s months %s', (finish, months, verdict) => {
    expect(findingOf(finishShelfLife, stored(finish, months)).verdict).toBe(verdict)
  })
  test.each(['osp', 'lacquer', 'bare-copper', 'enig'] as const)('the remedy for %s meets', (finish) => {
    expect(afterRemedy(finishShelfLife, factsWith(stored(finish, 24))).verdict).toBe('meets')
  })
})

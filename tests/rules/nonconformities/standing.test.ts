import { expect, test } from 'vitest'
import type { StepKind } from '@/shared/nonconformities/nonconformity'
import { correctedById, standingOf } from '@/shared/nonconformities/standing'

/*
 * The words are those of ISO 9000:2015: correction (3.12.3) and corrective action (3.12.2); that effectiveness is
 * reviewed afterwards is ISO 9001:2015, 10.2.1 d. In which order they make a standing is this project's own decision.
 */

const step = (kind: StepKind, helped: boolean | null = null, addedById = 'p') => ({
  kind,
  helped,
  addedById,
  withdrawn: null,
})
const withdrawn = (kind: StepKind) => ({
  ...step(kind),
  withdrawn: { by: 'Quill', at: '2026-01-02T00:00:00.000Z', why: 'It was another lot.' },
})

test('it stands as its steps leave it', () => {
  expect(standingOf([])).toBe('open')
  expect(standingOf([step('cause')])).toBe('open')
  expect(standingOf([step('containment')])).toBe('contained')
  expect(standingOf([step('containment'), step('correction')])).toBe('corrected')
  expect(standingOf([step('corrective action')])).toBe('corrected')
  expect(standingOf([step('correction'), step('check', true)])).toBe('checked')
})

test('a check that finds no help undoes the corrections before it, and only those', () => {
  const failed = [step('containment'), step('correction'), step('check', false)]
  expect(standingOf(failed)).toBe('contained')
  expect(standingOf([step('correction'), step('check', false)])).toBe('open')
  expect(standingOf([...failed, step('corrective action')])).toBe('corrected')
  expect(standingOf([...failed, step('corrective action'), step('check', true)])).toBe('checked')
})

test('a correction after a good check waits for a check of its own', () => {
  expect(standingOf([step('correction'), step('check', true), step('correction')])).toBe('corrected')
})

test('a check before any correction settles nothing', () => {
  expect(standingOf([step('check', true)])).toBe('open')
})

test('what is withdrawn does not count', () => {
  expect(standingOf([step('containment'), withdrawn('correction')])).toBe('contained')
  expect(correctedById([step('correction', null, 'p'), withdrawn('correction')])).toBe('p')
  expect(correctedById([withdrawn('correction')])).toBeUndefined()
})

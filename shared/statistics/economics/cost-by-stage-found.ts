import { fromMemory } from '@/shared/materials/source'

/**
 * The rule of ten: what mending a defect costs, relative to the first stage, by
 * the stage that finds it. A rule of thumb with weak sources and printed
 * counter-examples: starting values for a programme to replace by its own.
 */
export const RULE_OF_TEN = {
  source: fromMemory('origin usually given as B. Davis, The Economics of Automatic Testing, 1982'),
  stages: [
    { foundAt: 'component', relativeCost: 1 },
    { foundAt: 'board', relativeCost: 10 },
    { foundAt: 'system', relativeCost: 100 },
    { foundAt: 'service', relativeCost: 1000 },
  ],
} as const

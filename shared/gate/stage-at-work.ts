import { GATE_STANDINGS } from './gate'
import type { Judgement } from './judgement'
import { STAGES, type Stage } from '@/shared/plan/stage'

/** The stage whose gate is the next to open; the last once all are. Work of later stages can wait for it. */
export const stageAtWork = ({ gates }: Pick<Judgement, 'gates'>): Stage =>
  gates.find(({ status }) => !GATE_STANDINGS[status].isOpen)?.stage ?? STAGES[STAGES.length - 1]!

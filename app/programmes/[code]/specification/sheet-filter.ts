import { DEPARTMENTS, type Department } from '@/shared/plan/department'
import { STAGES, type Stage } from '@/shared/plan/stage'

/** What the sheet can be narrowed to besides stage and department. */
export const SHOWN = ['everything', 'missing', 'relaxed'] as const
export type Shown = (typeof SHOWN)[number]

export const SHOWN_TEXT: Record<Shown, string> = {
  everything: 'Everything',
  missing: 'Only what is not specified',
  relaxed: 'Only limits looser than their default',
}

export interface SheetFilter {
  readonly stage: Stage | undefined
  readonly department: Department | undefined
  readonly shown: Shown
}

type Asked = Readonly<Record<string, string | string[] | undefined>>

/** The filter in an address; what cannot be read filters nothing. */
export function sheetFilter(asked: Asked): SheetFilter {
  return {
    stage: STAGES.find((stage) => stage === asked['stage']),
    department: DEPARTMENTS.find((department) => department === asked['department']),
    shown: SHOWN.find((shown) => shown === asked['show']) ?? 'everything',
  }
}

/** Whether somebody asked for a part of the sheet: then nothing of it is folded away. */
export const isNarrowed = ({ stage, department, shown }: SheetFilter): boolean =>
  stage !== undefined || department !== undefined || shown !== 'everything'

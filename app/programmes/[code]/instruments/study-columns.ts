import { RECORD_KINDS } from '@/shared/records/record-kinds'

const { part, appraiser, trial, reading } = RECORD_KINDS['gauge-reading'].columns

/** What differs from row to row of a study; its name and instrument are said once. */
export const STUDY_COLUMNS = { part, appraiser, trial, reading } as const

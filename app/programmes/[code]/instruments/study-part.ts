import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Part } from '@/shared/rules/finding'

const RULE = 'gauges-capable'

/** What the rule found on one gauge study; undefined where the plan does not ask for it. */
export const partOfStudy = (view: ProgrammeView, tag: string, study: string): Part | undefined =>
  view.judgement.findings
    .get(RULE)
    ?.parts?.find(({ about }) => about?.['instrument'] === tag && about['study'] === study)

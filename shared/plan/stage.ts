/** The four stages of a programme, in the order their gates open. */
export const STAGES = ['specification', 'evaluation', 'control', 'assessment'] as const
export type Stage = (typeof STAGES)[number]

export const STAGE_NAMES: Record<Stage, string> = {
  specification: 'Specification',
  evaluation: 'Evaluation',
  control: 'Control',
  assessment: 'Assessment',
}

/** What each stage settles, in one line for the route card. */
export const STAGE_AIMS: Record<Stage, string> = {
  specification: 'Every limit the later stages work to is decided and agreed here.',
  evaluation: 'What is bought in is shown to meet the specification before it is soldered.',
  control: 'The process is held where the specification needs it.',
  assessment: 'What was made is inspected against the budget the specification set.',
}

/** The stage before, whose gate must stand first; undefined for the first. */
export const stageBefore = (stage: Stage): Stage | undefined => STAGES[STAGES.indexOf(stage) - 1]

/** Whether a stage comes after another. */
export const isLater = (stage: Stage, than: Stage): boolean => STAGES.indexOf(stage) > STAGES.indexOf(than)

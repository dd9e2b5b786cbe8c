import type { OpenTask } from '@/shared/gate/open-task'

/** How a thing on the desk bears on others. */
export type Bearing = 'others wait' | 'own work' | 'coming due' | 'I wait'

/** What is to be done about it. */
export type DeskVerb =
  | OpenTask['verb']
  | 'specify'
  | 'mend'
  | 'show'
  | 'attach'
  | 'test'
  | 'dispose'
  | 'check'
  | 'rework'
  | 'inspect again'
  | 'contain'
  | 'correct'
  | 'check that it helped'
  | 'reply'
  | 'calibrate'
  | 'solder or test again'
  | 'renew'

/** One line of a person's desk. */
export interface DeskEntry extends Omit<OpenTask, 'verb'> {
  readonly bearing: Bearing
  readonly verb: DeskVerb
  /** The names behind a line that stands for several things. */
  readonly several?: readonly string[]
  /** Whose move it is, where it is not this person's: "Quality". */
  readonly waitsFor?: string
}

/** Two lines with one key are one thing, however its counts or words change from day to day. */
export const deskKey = ({ bearing, verb, place, department, dueOn }: DeskEntry): string =>
  `${bearing} ${verb} ${department} ${dueOn ?? ''} ${JSON.stringify(place)}`

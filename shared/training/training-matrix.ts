import { groupedBy } from '@/shared/grouped-by'
import { SKILLS, type Skill } from '@/shared/records/kinds/training'
import { samePerson } from '@/shared/records/soldering-work'
import { heldOn, type Held, type Training } from './competence'

/** One person of the works: what they may do, and until when. */
export interface TrainedPerson {
  /** As it was written last. */
  readonly name: string
  readonly held: ReadonlyMap<Skill, Held>
}

/** Everybody whose training is recorded, by name; names that differ in case and spacing only are one person. */
export const trainingMatrix = (
  training: readonly Training[],
  today: string,
  maxMonths: number,
): TrainedPerson[] =>
  [...groupedBy(training, ({ worker }) => samePerson(worker)).values()]
    .map((own) => ({
      name: latest(own).worker,
      held: new Map(
        SKILLS.map(({ value }) => [
          value,
          heldOn(
            own.filter(({ skill }) => skill === value),
            today,
            maxMonths,
          ),
        ]),
      ),
    }))
    .sort((a, b) => (samePerson(a.name) < samePerson(b.name) ? -1 : 1))

const latest = (own: readonly Training[]): Training =>
  own.reduce((last, training) => (training.passedOn >= last.passedOn ? training : last))

/** Who may not do something for much longer: the soonest first. */
export const runningOut = (
  people: readonly TrainedPerson[],
): { readonly name: string; readonly skill: Skill; readonly until: string }[] =>
  people
    .flatMap(({ name, held }) =>
      [...held].flatMap(([skill, { competence, until }]) =>
        competence === 'runs out' && until !== null ? [{ name, skill, until }] : [],
      ),
    )
    .sort((a, b) => (a.until < b.until ? -1 : a.until > b.until ? 1 : 0))

export const skillName = (skill: string): string =>
  SKILLS.find(({ value }) => value === skill)?.label ?? skill

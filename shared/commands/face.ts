import type { z } from 'zod'
import type { Actor } from '@/shared/actor'
import type { Department } from '@/shared/plan/department'
import type { Place } from '@/shared/place'
import type { WorksKind } from '@/shared/works/works-kind'

/** Who may, by their part alone. `signature` asks for the password again. */
export interface Rights {
  readonly scope: 'programme' | 'works' | 'installation' | 'self'
  /** Of the works: what it is done to, named in the input by a member of this name. */
  readonly of?: WorksKind
  /** It starts the trail of what it opens. */
  readonly opens?: 'programme' | WorksKind
  /** What is done to a programme may also be done to these of the works, named in the input as `works`. */
  readonly worksToo?: readonly WorksKind[]
  /** Members of these departments may. */
  readonly departments?: readonly Department[]
  /** The programme's lead may, whatever department. */
  readonly lead?: true
  readonly administrator?: true
  /** Any signed-in person who is neither auditor nor administrator may. */
  readonly anyone?: true
  readonly signature?: true
}

/** How an entry of the trail reads. */
export interface Told {
  /** What it was about. */
  readonly subject: string
  /** What was set, decided or recorded, with its units; where it replaced something, that as well. */
  readonly what?: string | undefined
  /** The reason, question or answer, in the words of whoever gave it. */
  readonly words?: string | undefined
}

/** An instant as whoever reads an entry is told it: by the works' clock on a screen. */
export type TellMoment = (instant: string) => string

/** How the entries of one kind read, and where they lead. */
export interface EntryFace<Recorded extends z.ZodType = z.ZodType> {
  /** What it is to do, as the table of rights says it: "Sign a gate". */
  readonly label: string
  /** That it was done, as the trail and its searches say it: "Signed a gate". */
  readonly done: string
  /** As much of what is recorded as is told; whatever else was recorded stands in the trail all the same. */
  readonly record: Recorded
  readonly reads: (record: z.output<Recorded>, moment: TellMoment) => Told
  readonly leads: (record: z.output<Recorded>) => Place
}

/** What the door, the screens and the trail have to know of a command beside its work. */
export interface Face<
  Recorded extends z.ZodType = z.ZodType,
  Subject = undefined,
> extends EntryFace<Recorded> {
  readonly may: Rights
  /**
   * Why this actor may not do it to this subject, beyond their part: it belongs
   * to another department, or they would decide on their own work.
   */
  readonly refuses?: (actor: Actor, subject: Subject) => string | undefined
  /** `refuses` keeps duties apart, so that it is asked of whoever is away as well as of who stands in; a signature always is. */
  readonly separates?: true
}

/** Faces whose types are no longer known, as they are found by name. */
export interface AnyEntryFace {
  readonly label: string
  readonly done: string
  readonly record: z.ZodType
  readonly reads: (record: never, moment: TellMoment) => Told
  readonly leads: (record: never) => Place
}
export interface AnyFace extends AnyEntryFace {
  readonly may: Rights
  readonly refuses?: (actor: Actor, subject: never) => string | undefined
  readonly separates?: true
}

export const defineFace = <Recorded extends z.ZodType, Subject = undefined>(
  face: Face<Recorded, Subject>,
): Face<Recorded, Subject> => face

export const defineEntryFace = <Recorded extends z.ZodType>(face: EntryFace<Recorded>): EntryFace<Recorded> =>
  face

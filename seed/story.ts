import { randomUUID } from 'node:crypto'
import { DEMO_PASSWORD, type DemoPerson, type PersonIds } from '@/seed/people'
import type { InputOf, ResultOf } from '@/lib/commands/all-commands'
import { perform } from '@/lib/commands/perform'
import { database } from '@/lib/db/client'
import type { FileReader } from '@/lib/evidence/reached-file'
import { loadState } from '@/lib/programme/load-state'
import { judgeProgramme, type Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { DEPARTMENTS, type Department } from '@/shared/plan/department'
import type { Stage } from '@/shared/plan/stage'
import type { JsonValue } from '@/shared/trail/canonical-json'
import type { CommandName } from '@/shared/commands/all-faces'

/** Who signs for a department when the story does not say otherwise. */
const SIGNATORIES: Record<Department, DemoPerson> = { design: 'tomas', production: 'petra', quality: 'quill' }

/** Tells one programme's story: every step goes through the door, at the time the story says. */
export class Story {
  private minutes = 0

  constructor(
    private readonly people: PersonIds,
    readonly code: string,
    private day: string,
  ) {}

  /** Moves the story on to a day, 'YYYY-MM-DD'. */
  on(day: string): this {
    this.day = day
    this.minutes = 0
    return this
  }

  /** Moves the story on to the afternoon of its day. */
  later(): this {
    this.minutes = 7 * 60
    return this
  }

  /** Does one thing as one person. A step the door refuses is a fault in the story. */
  async act<N extends CommandName>(who: DemoPerson, command: N, input: InputOf<N>): Promise<ResultOf<N>> {
    const at = new Date(`${this.day}T08:00:00Z`)
    at.setUTCMinutes(this.minutes++)
    const outcome = await perform(this.people[who], command, input, {
      key: randomUUID(),
      proof: { password: DEMO_PASSWORD },
      at,
    })
    if (!outcome.ok)
      throw new Error(
        `The demo’s ${command} in ${this.code} was refused: ${outcome.message} ${JSON.stringify(outcome.fields)}`,
      )
    return outcome.result
  }

  /** The same, about this programme. */
  do<N extends CommandName>(
    who: DemoPerson,
    command: N,
    input: Omit<InputOf<N>, 'programme'>,
  ): Promise<ResultOf<N>> {
    return this.act(who, command, { programme: this.code, ...input } as InputOf<N>)
  }

  /** The programme's facts, and what follows from them, on the story's day. */
  async read(): Promise<{ state: ProgrammeState; judgement: Judgement }> {
    const state = await loadState(database(), await this.programmeId(), this.day)
    return { state, judgement: judgeProgramme(state) }
  }

  /** Somebody of the story as the evidence store knows them: by whom and for which programme a file is sent. */
  async fileReader(who: DemoPerson): Promise<FileReader> {
    return { personId: this.people[who], trailId: await this.programmeId() }
  }

  /** The same for what is sent of a machine of the works. */
  async machineReader(who: DemoPerson, code: string): Promise<FileReader> {
    const { id } = await database().machine.findUniqueOrThrow({ where: { code }, select: { id: true } })
    return { personId: this.people[who], trailId: id }
  }

  /** The same for what is sent of a supplier's lots. */
  async supplierReader(who: DemoPerson, code: string): Promise<FileReader> {
    const { id } = await database().supplier.findUniqueOrThrow({ where: { code }, select: { id: true } })
    return { personId: this.people[who], trailId: id }
  }

  private async programmeId(): Promise<string> {
    const { id } = await database().programme.findUniqueOrThrow({
      where: { code: this.code },
      select: { id: true },
    })
    return id
  }

  /** How many entries the programme's trail has. */
  private async entries(): Promise<number> {
    return database().trailEntry.count({ where: { trailId: await this.programmeId() } })
  }

  private async judged(): Promise<Judgement> {
    return (await this.read()).judgement
  }

  /** Specifies a list of values, each for the first time. */
  async specify(who: DemoPerson, values: Readonly<Record<string, JsonValue>>, reason: string): Promise<void> {
    for (const [parameter, value] of Object.entries(values))
      await this.do(who, 'revise-parameter', { parameter, value, seen: 0, reason })
  }

  /** Approves every item of a stage that is ready or has lapsed: each department asked signs once for all of its own. */
  async approve(stage: Stage): Promise<void> {
    const { items } = await this.judged()
    const open = items.filter(
      ({ item, status }) => item.definition.stage === stage && (status === 'ready' || status === 'lapsed'),
    )
    for (const department of DEPARTMENTS) {
      const asked = open.filter(({ item }) => item.definition.approvers.includes(department))
      if (asked.length === 0) continue
      await this.do(SIGNATORIES[department], 'approve-items', {
        department,
        seen: await this.entries(),
        items: asked.map(({ item, digest }) => ({ item: item.definition.key, digest, confirms: false })),
        comment: '',
      })
    }
  }

  /** Signs a gate for the three departments in their order. */
  async signGate(stage: Stage): Promise<void> {
    for (const department of DEPARTMENTS) {
      const gate = (await this.judged()).gates.find((entry) => entry.stage === stage)
      const [blocker] = gate?.blockers ?? []
      if (!gate || blocker)
        throw new Error(
          `The demo cannot sign the ${stage} gate of ${this.code}: ${blocker?.title}: ${blocker?.message}`,
        )
      await this.do(SIGNATORIES[department], 'sign-gate', { stage, department, digest: gate.digest })
    }
  }
}

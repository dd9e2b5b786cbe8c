import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { foreignDepartmentRefusal } from '@/shared/commands/own-department'
import { gateRefusal, type GateState } from '@/shared/gate/gate'
import type { ConcessionEntry } from '@/shared/gate/programme-state'
import { gateSignatoryRefusal } from '@/shared/gate/separation'
import type { ItemState } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'
import { counted } from '@/shared/quantity/counted'
import { STAGE_NAMES, STAGES } from '@/shared/plan/stage'
import { subjectInWords } from '@/shared/works/works-kind'

interface SigningGate {
  readonly department: Department
  readonly gate: GateState
  readonly items: readonly ItemState[]
  readonly concessions: readonly ConcessionEntry[]
}

export const signGate = defineFace({
  label: 'Sign a gate',
  done: 'Signed a gate',
  may: { scope: 'programme', departments: DEPARTMENTS, signature: true },
  refuses: (actor: Actor, { department, gate, items, concessions }: SigningGate) =>
    foreignDepartmentRefusal(actor, department) ??
    gateRefusal(gate, department) ??
    gateSignatoryRefusal(gate, items, concessions, actor.personId, department),
  record: z.object({
    stage: z.enum(STAGES),
    department: z.enum(DEPARTMENTS),
    digest: z.string(),
    trailSeq: z.number(),
    /** Not in what was signed before the works had trails. */
    worksHeads: z.array(z.object({ kind: z.string(), code: z.string(), seq: z.number() })).optional(),
  }),
  reads: ({ stage, department, digest, trailSeq, worksHeads = [] }) => ({
    subject: STAGE_NAMES[stage],
    what: `for ${DEPARTMENT_NAMES[department]}${department === 'quality' ? ', which opens it' : ''}; digest ${digest.slice(0, 12)}, over ${counted(trailSeq, 'entry', 'entries')} of the trail${worksHeads
      .map(({ kind, code, seq }) => `, ${seq} of ${subjectInWords({ kind, code })}`)
      .join('')}`,
  }),
  leads: ({ stage }) => ({ kind: 'gate', stage }),
})

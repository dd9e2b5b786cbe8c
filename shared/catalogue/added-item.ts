import { z } from 'zod'
import { DEPARTMENTS } from '@/shared/plan/department'
import type { ItemDefinition } from './item'
import { STAGES } from '@/shared/plan/stage'

const line = (what: string, max: number) =>
  z.string().trim().min(1, `${what} must be filled in.`).max(max, `${what} has at most ${max} characters.`)

/** An item a programme adds to its plan: settled by evidence and approval, without rules of its own. */
export const addedItemSchema = z
  .strictObject({
    stage: z.enum(STAGES, { error: 'Choose one of the four stages.' }),
    title: line('The title', 120),
    asks: line('What the item settles', 500),
    owner: z.enum(DEPARTMENTS, { error: 'Choose the department that owns it.' }),
    approvers: z.array(z.enum(DEPARTMENTS)).min(1, 'At least one department approves an item.'),
    evidence: z.string().trim().max(120).default(''),
  })
  .transform(({ evidence, approvers, ...rest }): Omit<ItemDefinition, 'key'> => ({
    ...rest,
    version: 1,
    approvers: DEPARTMENTS.filter((department) => approvers.includes(department)),
    parameters: [],
    limits: [],
    rules: [],
    evidence: evidence ? [{ kind: 'asked for', label: evidence, required: true }] : [],
    cautions: [],
  }))

/** An added item as it is stored, and as the schema reads it again. */
export interface StoredItem {
  stage: ItemDefinition['stage']
  title: string
  asks: string
  owner: ItemDefinition['owner']
  approvers: ItemDefinition['owner'][]
  evidence: string
}
export const storedItem = ({
  stage,
  title,
  asks,
  owner,
  approvers,
  evidence,
}: Omit<ItemDefinition, 'key'>): StoredItem => ({
  stage,
  title,
  asks,
  owner,
  approvers: [...approvers],
  evidence: evidence[0]?.label ?? '',
})

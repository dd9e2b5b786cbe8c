import { findItem } from '@/shared/catalogue/standard-plan'
import type { ProgrammeState } from '@/shared/gate/programme-state'

/** An item by its title, also when the plan no longer has it. */
export const itemNamed = ({ items }: Pick<ProgrammeState, 'items'>, key: string): string =>
  items.find(({ definition }) => definition.key === key)?.definition.title ?? findItem(key)?.title ?? key

import type { Limit } from '@/shared/plan/requirement'
import { readableOf, type AnyRule } from './rule'

/** The limits that a rule judges against, in the order of its reads. */
export const limitsRead = ({ reads }: Pick<AnyRule, 'reads'>): Limit[] =>
  Object.values(reads)
    .map(readableOf)
    .filter((readable): readable is Limit => readable.source === 'limit')

import type { ItemDefinition } from '@/shared/plan/item'

export const evaluationItems: readonly ItemDefinition[] = []

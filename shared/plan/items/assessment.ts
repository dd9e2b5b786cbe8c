import type { ItemDefinition } from '@/shared/plan/item'

export const assessmentItems: readonly ItemDefinition[] = []

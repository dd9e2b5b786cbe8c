import type { ItemDefinition } from '@/shared/plan/item'

export const controlItems: readonly ItemDefinition[] = []

import type { ItemDefinition } from '@/shared/plan/item'

export const specificationItems: readonly ItemDefinition[] = []

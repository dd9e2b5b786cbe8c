/** What a delivered batch is a batch of. */
export const LOT_KINDS = ['laminate', 'bare board', 'coupon', 'component', 'consumable'] as const
export type LotKind = (typeof LOT_KINDS)[number]

import { NARROW_CARD } from './narrow-card-id'

/** Draws the narrow card out where there is no room for it beside the sheet. */
export const NarrowCardButton = () => (
  <button type="button" className="button button-quiet narrow-card-button" popoverTarget={NARROW_CARD}>
    Items
  </button>
)

import type { ValueToTry } from './values-to-try'

/** The ends of the slider: from a third of the value to three times of it, as far as it may go. */
export function sliderEnds({ value, min, max }: Pick<ValueToTry, 'value' | 'min' | 'max'>): [number, number] {
  if (value === 0) return [min, max]
  const [low, high] = value > 0 ? [value / 3, value * 3] : [value * 3, value / 3]
  return [Math.max(min, low), Math.min(max, high)]
}

import { works } from '@/lib/settings/works'

/** A heading of amounts with the currency of the works, where one is stated: "Per board, EUR". */
export const priced = (heading: string): string => {
  const { currency } = works()
  return currency ? `${heading}, ${currency}` : heading
}

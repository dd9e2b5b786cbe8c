/** The pages to offer: first, last, and the neighbours of the present one; gaps as 0. */
export function pagesToOffer(page: number, pages: number): number[] {
  const wanted = [1, page - 1, page, page + 1, pages].filter((one) => one >= 1 && one <= pages)
  const rising = [...new Set(wanted)].sort((a, b) => a - b)
  return rising.flatMap((one, position) =>
    position > 0 && one - rising[position - 1]! > 1 ? [0, one] : [one],
  )
}

interface Astray {
  readonly part: number
  readonly appraiser: number
}

/** Which ranges no chance explains, and what to make of them. */
export function astrayInWords(
  beyond: readonly Astray[],
  { parts, appraisers }: { readonly parts: readonly string[]; readonly appraisers: readonly string[] },
): string {
  if (beyond.length === 0)
    return 'No range of the trials is greater than chance explains: everybody repeats equally well.'
  const said = beyond.map(({ part, appraiser }) => `${appraisers[appraiser]} on part ${parts[part]}`)
  return `Greater than chance explains: ${said.join('; ')}. Find out why (a misread or mistyped value, a fixture that slipped) before the study is believed; withdraw and measure again only with the reason on record.`
}

/** The most particular first: most browsers also name those that they descend from. */
const BROWSERS = [
  [/Edg(e|A|iOS)?\//, 'Edge'],
  [/OPR\//, 'Opera'],
  [/Firefox\/|FxiOS\//, 'Firefox'],
  [/Chrom(e|ium)\/|CriOS\//, 'Chromium or Chrome'],
  [/Safari\//, 'Safari'],
] as const
const SYSTEMS = [
  [/Android/, 'Android'],
  [/iPhone|iPad/, 'iOS'],
  [/Windows/, 'Windows'],
  [/Mac OS X/, 'macOS'],
  [/Linux|X11/, 'Linux'],
] as const

/** What a person would call the browser of a `User-Agent` header, such as "Firefox on Linux". */
export function browserName(userAgent: string): string {
  const find = (names: readonly (readonly [RegExp, string])[]) =>
    names.find(([pattern]) => pattern.test(userAgent))?.[1]
  const system = find(SYSTEMS)
  return `${find(BROWSERS) ?? 'Another program'}${system ? ` on ${system}` : ''}`
}

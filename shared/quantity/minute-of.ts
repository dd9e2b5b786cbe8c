/** '2026-03-04T10:11:12.345Z' as "2026-03-04 10:11 UTC". */
export const minuteOf = (instant: string): string => `${instant.slice(0, 16).replace('T', ' ')} UTC`

/**
 * Spread factors of normal samples, by subgroup size n, from which all other
 * control-chart constants follow:
 * d2 mean range ÷ σ; d3 standard deviation of the range ÷ σ; c4 mean of s ÷ σ.
 *
 * Source: their definitions (Tippett 1925 for the range), computed to 12 digits:
 * d2 and c4 by high-precision quadrature, d3 by Gauss–Legendre integration.
 * Printed tables are rounded to three decimals, and those derived from rounded
 * factors differ in the last digit (D4 at n = 3: 2.574 printed, 2.57459 exact).
 */
export const SPREAD_FACTORS = [
  { n: 2, d2: 1.128379167096, d3: 0.8525024664234, c4: 0.7978845608029 },
  { n: 3, d2: 1.692568750643, d3: 0.8883680040414, c4: 0.8862269254528 },
  { n: 4, d2: 2.058750746008, d3: 0.8798082028212, c4: 0.9213177319236 },
  { n: 5, d2: 2.325928947281, d3: 0.8640819410957, c4: 0.9399856029866 },
  { n: 6, d2: 2.534412721223, d3: 0.8480396861137, c4: 0.9515328619481 },
  { n: 7, d2: 2.704356751214, d3: 0.8332053356184, c4: 0.9593687886998 },
  { n: 8, d2: 2.847200612091, d3: 0.8198314897881, c4: 0.9650304561474 },
  { n: 9, d2: 2.970026324418, d3: 0.8078342745494, c4: 0.969310699714 },
  { n: 10, d2: 3.07750546167, d3: 0.7970506735155, c4: 0.9726592741216 },
  { n: 11, d2: 3.172872703816, d3: 0.7873146205464, c4: 0.9753500771452 },
  { n: 12, d2: 3.258455279744, d3: 0.7784783411994, c4: 0.9775593518548 },
  { n: 13, d2: 3.335980354098, d3: 0.7704162020597, c4: 0.9794056043142 },
  { n: 14, d2: 3.4067631082, d3: 0.7630230956207, c4: 0.9809714367555 },
  { n: 15, d2: 3.471826889882, d3: 0.7562114297239, c4: 0.9823161771627 },
  { n: 16, d2: 3.53198278611, d3: 0.7499080894058, c4: 0.9834835316158 },
  { n: 17, d2: 3.587883961765, d3: 0.7440517839566, c4: 0.9845064054718 },
  { n: 18, d2: 3.640063757937, d3: 0.738590853374, c4: 0.9854100438081 },
  { n: 19, d2: 3.688963023208, d3: 0.7334814955147, c4: 0.9862141368602 },
  { n: 20, d2: 3.734950119597, d3: 0.7286863457031, c4: 0.9869342675247 },
  { n: 21, d2: 3.778335829843, d3: 0.7241733407133, c4: 0.9875829288262 },
  { n: 22, d2: 3.819384643363, d3: 0.71991480843, c4: 0.9881702533158 },
  { n: 23, d2: 3.858323423285, d3: 0.7158867354876, c4: 0.988704545234 },
  { n: 24, d2: 3.895348148451, d3: 0.7120681751437, c4: 0.9891926749585 },
  { n: 25, d2: 3.930629219507, d3: 0.7084407658844, c4: 0.9896403755857 },
] as const satisfies readonly { n: number; d2: number; d3: number; c4: number }[]

/** The constants as the handbooks letter them; no units. */
export type ChartConstants = {
  n: number
  d2: number
  d3: number
  c4: number
  /** Limits of the mean from the mean range. */
  A2: number
  /** Limits of the mean from the mean standard deviation. */
  A3: number
  B3: number
  B4: number
  D3: number
  D4: number
  /** Limits of individual values from the mean range. */
  E2: number
}

/**
 * All constants for subgroups of n readings, 2 to 25; three-sigma limits.
 * Throws RangeError outside. Source: definitions as in the NIST/SEMATECH
 * e-Handbook of Statistical Methods, section 6.3.2.1.
 */
export function chartConstants(n: number): ChartConstants {
  const row = SPREAD_FACTORS.find((factors) => factors.n === n)
  if (!row) throw new RangeError(`Control-chart constants exist for subgroups of 2 to 25 readings, not ${n}.`)
  const { d2, d3, c4 } = row
  const deviationSpread = (3 * Math.sqrt(1 - c4 * c4)) / c4
  const rangeSpread = (3 * d3) / d2
  return {
    n,
    d2,
    d3,
    c4,
    A2: 3 / (d2 * Math.sqrt(n)),
    A3: 3 / (c4 * Math.sqrt(n)),
    B3: Math.max(0, 1 - deviationSpread),
    B4: 1 + deviationSpread,
    D3: Math.max(0, 1 - rangeSpread),
    D4: 1 + rangeSpread,
    E2: 3 / d2,
  }
}

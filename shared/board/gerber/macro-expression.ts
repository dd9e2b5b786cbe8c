/** What an expression of an aperture macro comes to with its variables; NaN where it cannot be read. */
export function macroValue(expression: string, variables: ReadonlyMap<number, number>): number {
  const tokens = expression.match(/\$\d+|\d+\.?\d*|\.\d+|[-+xX/()]/g) ?? []
  if (tokens.join('') !== expression.replaceAll(/\s/g, '')) return Number.NaN
  let at = 0
  let depth = 0

  function sum(): number {
    let value = product()
    while (tokens[at] === '+' || tokens[at] === '-') value += tokens[at++] === '+' ? product() : -product()
    return value
  }
  function product(): number {
    let value = factor()
    while (/^[xX/]$/.test(tokens[at] ?? ''))
      value = tokens[at++] === '/' ? value / factor() : value * factor()
    return value
  }
  function factor(): number {
    const token = tokens[at++]
    if (token === undefined || ++depth > MAX_DEPTH) return Number.NaN
    const value = factorOf(token)
    depth--
    return value
  }
  function factorOf(token: string): number {
    if (token === '-') return -factor()
    if (token === '+') return factor()
    if (token === '(') {
      const value = sum()
      return tokens[at++] === ')' ? value : Number.NaN
    }
    // A variable that was never given is 0 (specification 4.5.4.3).
    return token.startsWith('$') ? (variables.get(Number(token.slice(1))) ?? 0) : Number(token)
  }

  const value = sum()
  return at === tokens.length ? value : Number.NaN
}

const MAX_DEPTH = 100

const LAST_DIGITS = /^(.*?)(\d+)(\D*)$/s

/**
 * The serial number after this one: its last run of digits counted on, zeros
 * before it kept ("LX41-0099" → "LX41-0100"). Those already taken are passed
 * over. '' where there is nothing to count.
 */
export function nextSerial(serial: string, taken: ReadonlySet<string> = new Set()): string {
  let next = counted(serial.trim())
  while (next !== '' && taken.has(next)) next = counted(next)
  return next
}

function counted(serial: string): string {
  const [, before, digits, after] = LAST_DIGITS.exec(serial) ?? []
  if (digits === undefined || digits.length > 15) return ''
  return `${before}${String(Number(digits) + 1).padStart(digits.length, '0')}${after}`
}

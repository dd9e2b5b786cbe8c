/** "LX41-0001 to LX41-0024", also with an en dash or two dots between. */
const RANGE = /^(\S*?)(\d+)\s*(?:to|–|\.\.)\s*(\S*?)(\d+)$/i

/** A serial number as it is compared: spaces and capitals do not tell two apart. */
export const serialKey = (serial: string): string => serial.trim().toLowerCase()

/** Whether a text such as "LX41-0001 to LX41-0024, LX41-0030" names a serial number. */
export function namesSerial(text: string, serial: string): boolean {
  const wanted = serialKey(serial)
  return text
    .split(/[,;\n]+/)
    .map(serialKey)
    .some((entry) => entry === wanted || isInRange(entry, wanted) || entry.split(/\s+/).includes(wanted))
}

function isInRange(entry: string, wanted: string): boolean {
  const [, prefix = '', from = '', samePrefix = '', to = ''] = RANGE.exec(entry) ?? []
  if (!from || !wanted.startsWith(prefix) || (samePrefix !== '' && samePrefix !== prefix)) return false
  const number = wanted.slice(prefix.length)
  if (!/^\d+$/.test(number) || number.length !== from.length) return false
  return Number(from) <= Number(number) && Number(number) <= Number(to)
}

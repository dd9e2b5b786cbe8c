/**
 * A part of an address in the letters it stands for. One that is no such form, since it was decoded once too often on
 * its way, stays as it is: nothing has that name, and the page says so.
 */
export function addressPart(part: string): string {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}

/**
 * The text of a file that was read one character a byte, as it is meant: UTF-8
 * where it is that, and else as it stands. A mark of the byte order is left out.
 */
export function textOfBytes(text: string): string {
  if (!/[\u0080-\u00ff]/.test(text) || /[^\u0000-\u00ff]/.test(text)) return text.replace(/^\uFEFF/, '')
  const bytes = Uint8Array.from(text, (character) => character.charCodeAt(0))
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return text
  }
}

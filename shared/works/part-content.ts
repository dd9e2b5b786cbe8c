import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'

/**
 * What the signature of quality on a part covers, as canonical JSON: its number and the whole of its values. It holds
 * while they are the same, whatever revision they stand in.
 */
export const partContent = (part: string, values: object): string =>
  canonicalJson({ part, values: JSON.parse(JSON.stringify(values)) as JsonValue })

/** SHA-256 of that content, in hex. */
export const partDigest = (part: string, values: object): string => sha256(partContent(part, values))

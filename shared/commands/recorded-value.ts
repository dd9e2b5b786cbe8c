import { z } from 'zod'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** A specified value in an entry: null where there was none, never left out. */
export const recordedValue = z.custom<JsonValue>((value) => value !== undefined)

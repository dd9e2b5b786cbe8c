import type { z } from 'zod'
import { storableInput } from '@/lib/commands/storable-input'
import { Refused } from '@/shared/refused'

/** Parses a command's input; what is wrong is told by field, in the schema's own sentences. */
export function parseInput<Input>(schema: z.ZodType<Input>, input: unknown): Input {
  const parsed = schema.safeParse(storableInput(input))
  if (parsed.success) return parsed.data
  const fields: Record<string, string> = {}
  for (const { path, message } of parsed.error.issues) fields[path.map(String).join('.')] ??= message
  const [first = 'It cannot be read.'] = Object.values(fields)
  const others = Object.keys(fields).length - 1
  throw new Refused(others > 0 ? `${first} And ${others} more to mend.` : first, fields)
}

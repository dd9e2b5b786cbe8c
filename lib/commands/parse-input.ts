import type { z } from 'zod'
import { storableInput } from '@/lib/commands/storable-input'
import { Refused } from '@/shared/refused'

/** Parses a command's input; what is wrong is told by field, in the schema's own sentences. */
export function parseInput<Input>(schema: z.ZodType<Input>, input: unknown): Input {
  const parsed = schema.safeParse(storableInput(input))
  if (parsed.success) return parsed.data
  const fields: Record<string, string> = {}
  for (const { path, message } of parsed.error.issues.flatMap(issuesMeant))
    fields[path.map(String).join('.')] ??= message
  const [first = 'It cannot be read.'] = Object.values(fields)
  const others = Object.keys(fields).length - 1
  throw new Refused(others > 0 ? `${first} And ${others} more to mend.` : first, fields)
}

/** Where a part may be one of several things, what is wrong with the one that was meant: whose members were given. */
function issuesMeant(issue: z.core.$ZodIssue): readonly z.core.$ZodIssue[] {
  if (issue.code !== 'invalid_union') return [issue]
  const [meant, ...others] = issue.errors.filter(
    (issues) => !issues.some(({ code }) => code === 'unrecognized_keys'),
  )
  return meant && others.length === 0
    ? meant.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }))
    : [issue]
}

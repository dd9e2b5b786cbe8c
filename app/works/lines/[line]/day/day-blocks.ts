const PREFIX = 'logs.'

/** The name of a field of one log's part of the form. */
export const blockName = (block: string, part: 'machine' | 'log' | 'characteristic' | 'reading'): string =>
  `${PREFIX}${block}.${part}`

/** The parts that a form has, one for each log. */
export const blocksIn = (form: FormData): string[] => [
  ...new Set(
    [...form.keys()].flatMap((name) =>
      name.startsWith(PREFIX) ? (name.slice(PREFIX.length).split('.')[0] ?? []) : [],
    ),
  ),
]

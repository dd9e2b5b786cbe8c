/**
 * The member of a table that a text names, undefined where it names none. Text that people or addresses give may
 * be a name that every object has from its prototype, such as "constructor".
 */
export const ownMember = <T extends object>(table: T, name: string): T[keyof T] | undefined =>
  Object.hasOwn(table, name) ? table[name as keyof T] : undefined

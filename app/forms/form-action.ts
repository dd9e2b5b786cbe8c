import type { z } from 'zod'
import { inputFromForm } from '@/app/forms/input-from-form'
import type { FormAction } from '@/app/forms/form-state'
import { previewAtWorks, submit, type Done } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { commandNamed, type InputOf } from '@/lib/commands/all-commands'
import type { Previewed } from '@/lib/commands/considered/what-it-changes'
import type { CommandName } from '@/shared/commands/all-faces'

/** Parts of a command's input that a form asks for in a way of its own, instead of by a box each. */
export type OwnParts<N extends CommandName> = {
  readonly [Part in keyof InputOf<N>]?: (form: FormData) => unknown
}

interface FormActionOptions<N extends CommandName> {
  readonly own?: OwnParts<N>
  /** Where to go when it was taken, if not where the command leads. */
  readonly then?: (done: Done, form: FormData) => string
  /** The page it goes to says itself what was done, and where the work goes on. */
  readonly saidThere?: true
}

/** The server action of a form that gives a command: its boxes are read by the command's own schema. */
export const formAction =
  <N extends CommandName>(command: N, { own, then, saidThere }: FormActionOptions<N> = {}): FormAction =>
  (_state, form) =>
    submit(command, form, () => commandInput(command, form, own), then, saidThere)

/** The same of a form with a second button, which asks what sending it would turn in the programmes of the works. */
export const previewedAction =
  <N extends Previewed>(command: N, options: FormActionOptions<N> = {}): FormAction =>
  (state, form) =>
    asksForPreview(form)
      ? previewAtWorks(command, form, () => commandInput(command, form, options.own))
      : formAction(command, options)(state, form)

/** Whether the button that only asks was the one pressed. */
export const asksForPreview = (form: FormData): boolean => text(form, 'intent') === 'preview'

/** What a form gives a command, still to be parsed. */
export function commandInput<N extends CommandName>(
  command: N,
  form: FormData,
  own: OwnParts<N> = {},
): Record<string, unknown> {
  const { shape } = commandNamed(command).input as z.ZodObject
  const ways: Readonly<Record<string, ((form: FormData) => unknown) | undefined>> = own
  return Object.fromEntries(
    Object.entries(shape).map(([part, schema]) => [
      part,
      ways[part] ? ways[part](form) : inputFromForm(schema, form, part),
    ]),
  )
}
